/** Programs that print how fast the workbench is; nothing here is asserted. */
package plyworth.workbench.speed;
