/** The command line. Its JSON output is an interface, described in {@code workbench/README.md}. */
package plyworth.workbench.command;
