/** Commands about single structures: their figures, why they are kept out, and how they compare. */
package plyworth.workbench.command.candidate;
