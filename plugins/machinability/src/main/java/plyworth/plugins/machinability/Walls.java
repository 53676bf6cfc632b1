package plyworth.plugins.machinability;

/**
 * The transfer matrices of the laminates of a tile, as {@link Wall} has them, in columns.
 *
 * @param a temperature to temperature, 1
 * @param b flux to temperature, m²·K/W
 * @param c temperature to flux, W/(m²·K)
 * @param d flux to flux, 1
 */
record Walls(SeriesColumns a, SeriesColumns b, SeriesColumns c, SeriesColumns d) {

  /** Room for the walls of one tile. */
  static Walls room() {
    return new Walls(
        SeriesColumns.one(), new SeriesColumns(), new SeriesColumns(), SeriesColumns.one());
  }

  /** The same walls turned inside out. */
  Walls turned() {
    return new Walls(d, b, c, a);
  }

  /** Reads {@code count} columns of {@link plyworth.shared.scoring.Join#HEAT} that begin at one. */
  void read(double[][] states, int at, int from, int count) {
    int order = Series.ORDER;
    System.arraycopy(states[at + order], from, b.power(0), 0, count);
    for (int n = 1; n <= order; n++) {
      System.arraycopy(states[at + n - 1], from, a.power(n), 0, count);
      System.arraycopy(states[at + order + n], from, b.power(n), 0, count);
      System.arraycopy(states[at + 2 * order + n], from, c.power(n), 0, count);
      System.arraycopy(states[at + 3 * order + n], from, d.power(n), 0, count);
    }
  }

  /** Reads what a plain zone needs, a and c, of the first {@code count} of some columns. */
  void readPlain(double[][] states, int at, int[] columns, int count) {
    for (int n = 1; n <= Series.ORDER; n++) {
      gather(states[at + n - 1], columns, count, a.power(n));
      gather(states[at + 2 * Series.ORDER + n], columns, count, c.power(n));
    }
  }

  private static void gather(double[] states, int[] columns, int count, double[] power) {
    for (int i = 0; i < count; i++) {
      power[i] = states[columns[i]];
    }
  }

  /** Takes one wall into a row. */
  void put(int row, Wall wall) {
    for (int n = 0; n <= Series.ORDER; n++) {
      a.power(n)[row] = wall.a()[n];
      b.power(n)[row] = wall.b()[n];
      c.power(n)[row] = wall.c()[n];
      d.power(n)[row] = wall.d()[n];
    }
  }
}
