/**
 * Recyclability: mass shares of a laminate, judged by published rule sets that are kept as data.
 *
 * <p>{@link plyworth.plugins.recyclability.Composition} weighs the families of a structure, {@link
 * plyworth.plugins.recyclability.Measures} and {@link plyworth.plugins.recyclability.MeasureBounds}
 * turn masses into what rules speak of, {@link plyworth.plugins.recyclability.RuleSet} decides.
 */
package plyworth.plugins.recyclability;
