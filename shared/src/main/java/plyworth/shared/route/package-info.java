/**
 * The passes through the plant that make a structure: print, coat, laminate, slit. Presses, dryers
 * and inks are data.
 */
package plyworth.shared.route;
