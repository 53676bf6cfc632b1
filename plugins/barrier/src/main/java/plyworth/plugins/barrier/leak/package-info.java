/**
 * What passes through an open channel: gas that diffuses in the still air within it.
 *
 * <p>Valid without a difference in pressure between pack and surroundings; a few hPa through holes
 * above about 10 µm can carry more than diffusion does.
 *
 * <p>Literature: diffusion through a cylinder with the resistance of both its ends, as in models of
 * stomata and of perforated films (analytic; the form from memory).
 */
package plyworth.plugins.barrier.leak;
