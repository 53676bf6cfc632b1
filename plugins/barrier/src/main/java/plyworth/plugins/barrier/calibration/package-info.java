/**
 * From figures measured on today's pack to one correction of what all packs share.
 *
 * <p>Valid where forming, handling and seals explain why a measured figure differs from a predicted
 * one, and do so alike for all packs of a brief. What a wrong material figure causes is not in it.
 *
 * <p>Literature: weighted means and their uncertainty, JCGM 100 (from memory).
 */
package plyworth.plugins.barrier.calibration;
