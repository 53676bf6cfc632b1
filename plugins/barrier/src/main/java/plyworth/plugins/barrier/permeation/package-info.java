/**
 * What a single layer and a leak let through, of what, and how that moves with temperature,
 * humidity, pinholes and harm; with the properties and parameters that it goes by.
 */
package plyworth.plugins.barrier.permeation;
