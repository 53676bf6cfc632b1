/** What was measured: on today's pack, on materials and on candidates. */
package plyworth.workbench.desktop.evidence;
