/**
 * The barrier of many candidates at once: what each layer contributes, how contributions join, and
 * blocks of joined states turned into criteria and bounds.
 */
package plyworth.plugins.barrier.layerwise;
