package plyworth.workbench.engine.search;

/**
 * Neighbouring members of a kind, in the order of their amounts.
 *
 * @param from the first
 * @param to the one after the last
 */
record Range(int from, int to) {

  int size() {
    return to - from;
  }

  Range firstHalf() {
    return new Range(from, (from + to) >>> 1);
  }

  Range secondHalf() {
    return new Range((from + to) >>> 1, to);
  }
}
