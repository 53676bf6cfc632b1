/**
 * Relative humidity through a laminate whose layers let more water through the damper they are, in
 * steady state.
 *
 * <p>Within a layer the flux J obeys J = −f(h)/r · dh/ds, with the water resistance r the layer
 * would have at f = 1. Integrated over the layer, J·r = ∫ f dh between its faces (Kirchhoff
 * transformation; standard), which is what ever finer subdivision of the layer converges to.
 */
package plyworth.plugins.barrier.laminate;
