/**
 * Finds, checks, orders and binds scoring plugins. A plugin is trusted code: what a process cannot
 * contain (ending the process, using up its memory) is not contained.
 */
package plyworth.workbench.host;
