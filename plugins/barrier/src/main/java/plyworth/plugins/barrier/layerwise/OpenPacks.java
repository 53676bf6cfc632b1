package plyworth.plugins.barrier.layerwise;

/**
 * The packs of a strip that are looked at more closely, one behind the other: the rows they come
 * from, and the ends of what they conduct. Each step goes through all of them before the next one
 * begins, so that none waits for another. Reused from strip to strip.
 */
final class OpenPacks {

  private final PackEnds ends;
  private final HumidityBounds humidity;
  private final int[] rows;
  private final int[] wide;
  private final double[] edges;
  private final double[][] least;
  private final double[][] largest;
  private int many;

  /** Room for as many packs of a block as a strip holds. */
  OpenPacks(PackEnds ends, int strip) {
    this.ends = ends;
    this.humidity = ends.humidity();
    this.rows = new int[strip];
    this.wide = new int[strip];
    this.edges = new double[strip];
    this.least = new double[ends.columns().length][strip];
    this.largest = least.clone();
    for (int p = 0; p < least.length; p++) {
      PackEnds.Columns columns = ends.columns()[p];
      largest[p] = columns.low() == columns.high() ? least[p] : new double[strip];
    }
  }

  /** How many packs there are. */
  int many() {
    return many;
  }

  /** The rows of the block they come from; to be filled before they are read. */
  int[] rows() {
    return rows;
  }

  /** Least conductances to a permeant, by its index. */
  double[] least(int permeant) {
    return least[permeant];
  }

  /** Largest conductances to a permeant. */
  double[] largest(int permeant) {
    return largest[permeant];
  }

  /** Reads the packs of the first rows, narrowed by the humidity within. */
  void read(int rows) {
    many = rows;
    for (int p = 0; p < least.length; p++) {
      PackEnds.Columns columns = ends.columns()[p];
      gather(columns.edges(), edges);
      conduct(columns.high(), columns.leak(), least[p]);
      if (largest[p] != least[p]) {
        conduct(columns.low(), columns.leak(), largest[p]);
      }
    }
    narrow();
    if (ends.oxygen() >= 0) {
      forget(least[ends.oxygen()], largest[ends.oxygen()]);
    }
  }

  private void gather(double[] column, double[] figures) {
    for (int i = 0; i < many; i++) {
      figures[i] = column[rows[i]];
    }
  }

  /** Gathers first, since divisions that stand side by side are done several at a time. */
  private void conduct(double[] resistances, double leak, double[] conductances) {
    gather(resistances, conductances);
    double faceM2 = ends.faceM2();
    for (int i = 0; i < many; i++) {
      conductances[i] = faceM2 / conductances[i] + (edges[i] + leak);
    }
  }

  private void narrow() {
    int water = ends.water();
    int oxygen = ends.oxygen();
    int found = 0;
    for (int i = 0; i < many; i++) {
      wide[found] = i;
      found += wide(water, i) || wide(oxygen, i) ? 1 : 0;
    }
    for (int w = 0; w < found; w++) {
      if (humidity.narrow(rows[wide[w]])) {
        set(water, wide[w], humidity.waterLow, humidity.waterHigh);
        set(oxygen, wide[w], humidity.oxygenLow, humidity.oxygenHigh);
      }
    }
  }

  private boolean wide(int permeant, int i) {
    return permeant >= 0
        && largest[permeant][i] - least[permeant][i] > HumidityBounds.NARROW * least[permeant][i];
  }

  private void set(int permeant, int i, double low, double high) {
    if (permeant >= 0) {
      PackEnds.Columns columns = ends.columns()[permeant];
      double edge = columns.edges()[rows[i]] + columns.leak();
      least[permeant][i] = ends.faceM2() / high + edge;
      largest[permeant][i] = ends.faceM2() / low + edge;
    }
  }

  /** Nothing is known of oxygen where a polymer's humidity is unknown. */
  private void forget(double[] least, double[] largest) {
    for (int i = 0; i < many; i++) {
      if (humidity.unknown(rows[i])) {
        least[i] = Double.NaN;
        largest[i] = Double.NaN;
      }
    }
  }

  /** Puts a figure of each pack into its row. */
  void scatter(double[] figures, double[] column) {
    for (int i = 0; i < many; i++) {
      column[rows[i]] = figures[i];
    }
  }
}
