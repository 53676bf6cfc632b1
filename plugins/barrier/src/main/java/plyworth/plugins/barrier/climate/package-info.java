/**
 * Where packs are kept: temperature and humidity outside and inside, season by season, and what
 * they make of each layer.
 */
package plyworth.plugins.barrier.climate;
