package plyworth.workbench.robustness;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import plyworth.workbench.engine.table.Progress;

/** Asks a function for what variance shares are estimated from, one base point after another. */
final class Evaluation {

  private final int inputs;
  private final ToDoubleFunction<double[]> function;
  private final long worlds;
  private final Progress progress;
  private final AtomicLong done = new AtomicLong();

  /**
   * An evaluation.
   *
   * @param inputs how many coordinates the function takes
   * @param worlds how often it will be asked
   * @param progress told how often it was
   */
  Evaluation(int inputs, ToDoubleFunction<double[]> function, long worlds, Progress progress) {
    this.inputs = inputs;
    this.function = function;
    this.worlds = worlds;
    this.progress = progress;
  }

  /**
   * The figures that belong to one base point: at A with each input in turn from B, at A, and at B.
   *
   * @param base coordinates of A, then those of B
   */
  double[] figures(double[] base) {
    double[] a = Arrays.copyOf(base, inputs);
    double[] b = Arrays.copyOfRange(base, inputs, 2 * inputs);
    double[] figures = new double[inputs + 2];
    for (int i = 0; i < inputs; i++) {
      double[] mixed = a.clone();
      mixed[i] = b[i];
      figures[i] = figure(mixed);
    }
    figures[inputs] = figure(a);
    figures[inputs + 1] = figure(b);
    return figures;
  }

  private double figure(double[] point) {
    if (progress.cancelled()) {
      throw new CancellationException();
    }
    double figure = function.applyAsDouble(point);
    progress.scored(done.incrementAndGet(), worlds);
    return figure;
  }

  /** The shares to be estimated from the figures of many base points. */
  VarianceShares shares(double[][] figures) {
    return new VarianceShares(
        column(figures, inputs),
        column(figures, inputs + 1),
        IntStream.range(0, inputs).mapToObj(i -> column(figures, i)).toArray(double[][]::new));
  }

  private static double[] column(double[][] figures, int column) {
    return Arrays.stream(figures).mapToDouble(row -> row[column]).toArray();
  }
}
