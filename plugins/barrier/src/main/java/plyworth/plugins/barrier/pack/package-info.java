/**
 * A structure made into the pack of the brief: what its faces, seal edge and leaks let through, how
 * long its product keeps, and what measurements of today's pack correct.
 */
package plyworth.plugins.barrier.pack;
