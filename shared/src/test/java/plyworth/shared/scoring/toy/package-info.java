/** A small plugin that keeps to every rule, and deviations from it that each break one. */
package plyworth.shared.scoring.toy;
