package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Counts draws, one after another. */
final class Chances {

  private final List<Long> paths;
  private final List<Sample> samples = new ArrayList<>();
  private final double[] first;
  private final double[] three;
  private final double[] ten;
  private final int[] unranked;
  private final double[][] weights;

  /** Nothing counted yet, for the candidates of these paths. */
  Chances(List<Long> paths) {
    this.paths = List.copyOf(paths);
    first = new double[paths.size()];
    three = new double[paths.size()];
    ten = new double[paths.size()];
    unranked = new int[paths.size()];
    weights = new double[paths.size()][];
  }

  /** Counts a draw. */
  void add(Sample sample) {
    samples.add(sample);
    for (int i = 0; i < sample.few().length; i++) {
      int candidate = sample.few()[i];
      first[candidate] += sample.first()[i];
      three[candidate] += sample.three()[i];
      ten[candidate] += sample.ten()[i];
      weigh(candidate, sample.first()[i], sample.weights());
    }
    sample.unranked().stream().forEach(candidate -> unranked[candidate]++);
  }

  private void weigh(int candidate, double share, double[] drawn) {
    if (share > 0) {
      if (weights[candidate] == null) {
        weights[candidate] = new double[drawn.length];
      }
      for (int c = 0; c < drawn.length; c++) {
        weights[candidate][c] += share * drawn[c];
      }
    }
  }

  /** Whether each candidate came among the first ten in some draw. */
  List<Boolean> everAmongTen() {
    return Arrays.stream(ten).mapToObj(times -> times > 0).toList();
  }

  /** Number of draws. */
  int draws() {
    return samples.size();
  }

  /**
   * The largest standard error of a share of first ranks. Always or never first so far is not yet
   * certain: a share is also looked at as if it had come first once more and once not (Laplace's
   * rule of succession).
   */
  double worstError() {
    int n = draws();
    return Arrays.stream(first)
        .map(times -> Math.max(error(times / n, n), error((times + 1) / (n + 2), n + 2)))
        .max()
        .orElse(0);
  }

  /** The standard error of a share of {@code n} draws: √(b (1 − b) / n). */
  static double error(double share, int n) {
    return Math.sqrt(Math.max(0, share * (1 - share)) / n);
  }

  /** The chances of the candidates, in the order of their paths; of none before the first draw. */
  List<Chance> all() {
    if (draws() == 0) {
      return List.of();
    }
    Chance[] all = new Chance[paths.size()];
    Arrays.parallelSetAll(all, this::chance);
    return List.of(all);
  }

  private Chance chance(int candidate) {
    double n = draws();
    double[] central = central(candidate);
    return new Chance(
        paths.get(candidate),
        first[candidate] / n,
        error(first[candidate] / n, draws()),
        three[candidate] / n,
        ten[candidate] / n,
        unranked[candidate] / n,
        Arrays.stream(central).boxed().toList(),
        central.length == 0 ? Double.NaN : confidence(candidate, central));
  }

  private double[] central(int candidate) {
    return weights[candidate] == null
        ? new double[0]
        : Arrays.stream(weights[candidate]).map(sum -> sum / first[candidate]).toArray();
  }

  /** Who does not come first under any weights drawn is not among the rivals, and need not be. */
  private double confidence(int candidate, double[] central) {
    double sum = 0;
    for (Sample sample : samples) {
      int at = Arrays.binarySearch(sample.rivals(), candidate);
      sum += at < 0 ? 0 : Places.of(sample.world().sums(central)).within(at, 1);
    }
    return sum / draws();
  }
}
