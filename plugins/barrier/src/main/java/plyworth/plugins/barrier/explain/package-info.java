/** What is told of one structure: findings, and the breakdown behind its figures. */
package plyworth.plugins.barrier.explain;
