package plyworth.workbench.analysis;

/** Measures how long a step takes. */
final class Stopwatch {

  private final long start = System.nanoTime();

  double seconds() {
    return (System.nanoTime() - start) * 1e-9;
  }
}
