/** The ranking as bars and as a table, the weights beside it, and how it moved. */
package plyworth.workbench.desktop.ranking;
