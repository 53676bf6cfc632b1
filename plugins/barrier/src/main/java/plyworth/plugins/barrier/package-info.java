/**
 * Oxygen, water vapour and alcohol through a formed pack, against the shelf life that is asked for.
 *
 * <p>Model: steady permeation of layers in series, each at the humidity it sees, plus the open edge
 * of the sealant in the seals; the product is a sink for oxygen, a sorption isotherm for water and
 * a liquid whose alcohol and water leave together, its composition moving as they go. Balances
 * follow product and head-space over time through a constant climate or through seasons.
 *
 * <p>Valid for flat-to-lightly-flexed laminates without leaks and packs whose product stays in
 * equilibrium with the gas around it. Not in it: time lags, leaks, open holes, flavour loss.
 *
 * <p>Literature: Polymer Journal 36 (2004) 386 (series model of coextrusions); Journal of Applied
 * Packaging Research 13(2) art. 4 (pinholes in foil); sorption balance of the pack, GAB isotherms,
 * Antoine and Wilson equations (from memory).
 */
package plyworth.plugins.barrier;
