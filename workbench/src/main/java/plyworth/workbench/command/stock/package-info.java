/** Commands about what is at hand: studies, plugins, products. */
package plyworth.workbench.command.stock;
