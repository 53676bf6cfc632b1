/**
 * Diffusion in time through layers in series: Fick's second law by finite volumes, and time lags.
 *
 * <p>Valid for layers whose solubility and diffusivity do not change with what they hold, and that
 * do not swell.
 *
 * <p>Literature: Crank, Mathematics of Diffusion (from memory).
 */
package plyworth.plugins.barrier.diffusion;
