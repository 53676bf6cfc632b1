/** Benchmarks of the workbench on the example studies. */
package plyworth.workbench.speed;
