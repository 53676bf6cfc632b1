/** The plugins: what they are, what can be set, and how they reckon. */
package plyworth.workbench.desktop.plugin;
