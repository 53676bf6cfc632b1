package plyworth.plugins.machinability;

/**
 * The transfer matrix of a laminate from its outer to its inner face: with temperatures T and heat
 * fluxes q, T_outer = a·T_inner + b·q_inner and q_outer = c·T_inner + d·q_inner, each element a
 * {@link Series} in the Laplace variable (Carslaw and Jaeger, Conduction of Heat in Solids,
 * composite walls; from memory).
 *
 * @param a temperature to temperature, 1
 * @param b flux to temperature, m²·K/W
 * @param c temperature to flux, W/(m²·K)
 * @param d flux to flux, 1
 */
record Wall(double[] a, double[] b, double[] c, double[] d) {

  /** No layer at all. */
  static final Wall NONE =
      new Wall(
          Series.one(), new double[Series.ORDER + 1], new double[Series.ORDER + 1], Series.one());

  /**
   * One homogeneous layer.
   *
   * @param resistance m²·K/W
   * @param capacity J/(m²·K)
   */
  static Wall layer(double resistance, double capacity) {
    double[] a = Series.one();
    double[] b = new double[Series.ORDER + 1];
    double[] c = new double[Series.ORDER + 1];
    b[0] = resistance;
    for (int n = 1; n <= Series.ORDER; n++) {
      c[n] = a[n - 1] * capacity / (2 * n - 1);
      a[n] = a[n - 1] * resistance * capacity / (2 * n * (2 * n - 1));
      b[n] = a[n] * resistance / (2 * n + 1);
    }
    return new Wall(a, b, c, a);
  }

  /** This wall with another on its inner side. */
  Wall then(Wall inner) {
    return new Wall(
        Series.products(a, inner.a, b, inner.c),
        Series.products(a, inner.b, b, inner.d),
        Series.products(c, inner.a, d, inner.c),
        Series.products(c, inner.b, d, inner.d));
  }

  /** Reads the components of {@link plyworth.shared.scoring.Join#HEAT}, one column each. */
  static Wall read(double[][] states, int at, int column) {
    int order = Series.ORDER;
    double[] a = Series.one();
    double[] b = new double[order + 1];
    double[] c = new double[order + 1];
    double[] d = Series.one();
    b[0] = states[at + order][column];
    for (int n = 1; n <= order; n++) {
      a[n] = states[at + n - 1][column];
      b[n] = states[at + order + n][column];
      c[n] = states[at + 2 * order + n][column];
      d[n] = states[at + 3 * order + n][column];
    }
    return new Wall(a, b, c, d);
  }

  /** Writes the components of {@link plyworth.shared.scoring.Join#HEAT}. */
  void write(double[] state, int at) {
    int order = Series.ORDER;
    System.arraycopy(a, 1, state, at, order);
    System.arraycopy(b, 0, state, at + order, order + 1);
    System.arraycopy(c, 1, state, at + 2 * order + 1, order);
    System.arraycopy(d, 1, state, at + 3 * order + 1, order);
  }
}
