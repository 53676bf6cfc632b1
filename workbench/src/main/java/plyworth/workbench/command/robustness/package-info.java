/** Commands that say how far a ranking can be trusted. */
package plyworth.workbench.command.robustness;
