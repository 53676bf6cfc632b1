/**
 * Whether a structure seals and runs on the filling machine: attack of the contents on the inner
 * bond, bending and tensile stiffness, dwell and temperature window of the jaws, packs per minute.
 *
 * <p>Model: bonded elastic layers; one-dimensional conduction through all webs between two jaws
 * with a contact conductance, constant figures, no fusion heat unless set. The warming of the seal
 * interface is reduced to its two slowest exponentials, found from the power series of the transfer
 * matrices, so that the layerwise form gives the same figures as the whole structure. {@link
 * plyworth.plugins.machinability.Conduction} solves the same conduction by finite volumes, draws
 * the curve in explanations and keeps the reduction honest in tests.
 *
 * <p>Not modelled: melting, pressure, flow into the step of a crossing, wrinkles, hot tack. Where
 * the interface must warm by less than two percent of the way to the jaw, the dwell is a rough
 * interpolation.
 */
package plyworth.plugins.machinability;
