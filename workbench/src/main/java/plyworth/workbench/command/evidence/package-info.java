/** Commands about figures of materials: known, open and measured. */
package plyworth.workbench.command.evidence;
