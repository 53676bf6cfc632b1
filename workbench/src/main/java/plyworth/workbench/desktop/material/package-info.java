/** Figures of materials: shown, changed, taken out and read in; and which are worth measuring. */
package plyworth.workbench.desktop.material;
