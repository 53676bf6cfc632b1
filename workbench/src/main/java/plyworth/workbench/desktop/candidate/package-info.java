/** The selected candidate: its cross-section, its figures, its findings and its explanation. */
package plyworth.workbench.desktop.candidate;
