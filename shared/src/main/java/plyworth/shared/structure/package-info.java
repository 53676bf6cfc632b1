/**
 * Layers, structures, and what may stand where: positions with options, and neighbour rules as
 * data.
 */
package plyworth.shared.structure;
