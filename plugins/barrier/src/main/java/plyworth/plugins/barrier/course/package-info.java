/**
 * What happens over time: how moisture, oxygen or a volatile content moves in a pack of given
 * conductance, and when it reaches the limit of the brief.
 */
package plyworth.plugins.barrier.course;
