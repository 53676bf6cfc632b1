/**
 * The print-method plugin: how much ink, water and solvent a structure's print puts down, what is
 * emitted and dried, and whether the method suits the printed surface.
 */
package plyworth.plugins.printmethod;
