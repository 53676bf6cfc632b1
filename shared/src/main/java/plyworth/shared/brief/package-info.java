/** The brief: product and its limits, climate, pack, filling machine, market and order. */
package plyworth.shared.brief;
