/** Positions and their options, how candidates run through them, and limits. */
package plyworth.workbench.desktop.position;
