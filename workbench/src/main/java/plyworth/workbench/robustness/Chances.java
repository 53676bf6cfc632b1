package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Counts draws. */
final class Chances {

  private final List<Sample> samples;
  private final List<double[]> sums;

  private Chances(List<Sample> samples) {
    this.samples = samples;
    sums = samples.stream().map(sample -> sample.sums(sample.weights())).toList();
  }

  /** The chances of candidates, in the order of their paths. */
  static List<Chance> of(List<Long> paths, List<Sample> samples) {
    Chances chances = new Chances(samples);
    List<Chance> all = new ArrayList<>();
    for (long path : paths) {
      all.add(chances.chance(path, all.size()));
    }
    return all;
  }

  /** The standard error of a share of {@code n} draws: √(b (1 − b) / n). */
  static double error(double share, int n) {
    return Math.sqrt(Math.max(0, share * (1 - share)) / n);
  }

  private Chance chance(long path, int candidate) {
    double first = share(candidate, 1);
    double[] central = central(candidate, first);
    return new Chance(
        path,
        first,
        error(first, samples.size()),
        share(candidate, 3),
        samples.stream().filter(s -> s.values()[candidate] == null).count()
            / (double) samples.size(),
        Arrays.stream(central).boxed().toList(),
        central.length == 0 ? Double.NaN : confidence(candidate, central));
  }

  private double share(int candidate, int last) {
    return sums.stream().mapToDouble(s -> Sample.within(s, candidate, last)).average().orElse(0);
  }

  private double[] central(int candidate, double first) {
    if (first == 0) {
      return new double[0];
    }
    double[] mean = new double[samples.get(0).weights().length];
    for (int i = 0; i < samples.size(); i++) {
      double share = Sample.within(sums.get(i), candidate, 1);
      for (int c = 0; share > 0 && c < mean.length; c++) {
        mean[c] += share * samples.get(i).weights()[c] / (first * samples.size());
      }
    }
    return mean;
  }

  private double confidence(int candidate, double[] central) {
    return samples.stream()
        .mapToDouble(sample -> Sample.within(sample.sums(central), candidate, 1))
        .average()
        .orElse(Double.NaN);
  }
}
