package plyworth.plugins.barrier.diffusion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Fick's second law through layers in series: ∂(S·a)/∂t = ∂(P ∂a/∂x)/∂x, activity given upstream
 * and nothing downstream, nothing in the layers at first.
 *
 * <p>Finite volumes: every layer is cut into equal cells, with half a cell of resistance on either
 * side of the middle of each, so what leaves one cell enters the next and mass is kept to rounding.
 * Time steps by the method of Crank and Nicolson, the first few cut in four and taken implicitly so
 * that the jump at the face does not ring (Rannacher, from memory). Second order in step and cell.
 */
public final class LayerStack {

  /** Steps taken implicitly at first, in quarters. */
  private static final int DAMPED = 2;

  private static final int QUARTERS = 4;

  private final double[] capacity;
  private final double[] conductance;

  /**
   * Layers cut into cells.
   *
   * @param layers upstream first
   * @param cells cells in each layer, at least 1
   */
  public LayerStack(List<DiffusionLayer> layers, int cells) {
    List<Double> capacities = new ArrayList<>();
    List<Double> resistances = new ArrayList<>(List.of(0.0));
    for (DiffusionLayer layer : layers) {
      for (int i = 0; i < cells; i++) {
        double half = layer.resistance() / cells / 2;
        resistances.set(resistances.size() - 1, resistances.get(resistances.size() - 1) + half);
        resistances.add(half);
        capacities.add(layer.capacity() / cells);
      }
    }
    capacity = capacities.stream().mapToDouble(c -> c).toArray();
    conductance = resistances.stream().mapToDouble(r -> 1 / r).toArray();
  }

  /**
   * What has passed at some moment, per square metre.
   *
   * @param day day
   * @param entered what has entered upstream, g/m²
   * @param left what has left downstream, g/m²
   * @param held what the layers hold, g/m²
   */
  public record Moment(double day, double entered, double left, double held) {}

  /**
   * The course up to a day.
   *
   * @param upstream activity upstream by day
   * @param steps equal steps, at least 1
   * @return as many moments and one more, from the beginning on
   */
  public List<Moment> course(DoubleUnaryOperator upstream, double days, int steps) {
    List<Moment> moments = new ArrayList<>(List.of(new Moment(0, 0, 0, 0)));
    double[] activity = new double[capacity.length];
    double[] passed = new double[2];
    double step = days / steps;
    for (int i = 0; i < steps; i++) {
      if (i < DAMPED) {
        for (int q = 0; q < QUARTERS; q++) {
          double end = (i + (q + 1.0) / QUARTERS) * step;
          advance(activity, passed, upstream.applyAsDouble(end), 1, step / QUARTERS);
        }
      } else {
        advance(activity, passed, upstream.applyAsDouble((i + 0.5) * step), 0.5, step);
      }
      moments.add(new Moment((i + 1) * step, passed[0], passed[1], held(activity)));
    }
    return moments;
  }

  private double held(double[] activity) {
    double held = 0;
    for (int i = 0; i < activity.length; i++) {
      held += capacity[i] * activity[i];
    }
    return held;
  }

  /** One step; the share {@code weight} of its flows is at its end. */
  private void advance(
      double[] activity, double[] passed, double upstream, double weight, double step) {
    double[] before = activity.clone();
    int n = activity.length;
    double[] diagonal = new double[n];
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      double both = conductance[i] + conductance[i + 1];
      diagonal[i] = capacity[i] / step + weight * both;
      right[i] = capacity[i] / step * before[i] + (1 - weight) * gain(before, i);
    }
    right[0] += conductance[0] * upstream;
    solve(diagonal, right, weight, activity);
    passed[0] += step * conductance[0] * (upstream - mean(before[0], activity[0], weight));
    passed[1] += step * conductance[n] * mean(before[n - 1], activity[n - 1], weight);
  }

  private static double mean(double before, double after, double weight) {
    return (1 - weight) * before + weight * after;
  }

  private double gain(double[] activity, int i) {
    double outer = i == 0 ? 0 : activity[i - 1];
    double inner = i == activity.length - 1 ? 0 : activity[i + 1];
    return conductance[i] * (outer - activity[i]) + conductance[i + 1] * (inner - activity[i]);
  }

  /** The tridiagonal system by elimination. */
  private void solve(double[] diagonal, double[] right, double weight, double[] result) {
    int n = diagonal.length;
    for (int i = 1; i < n; i++) {
      double beside = weight * conductance[i];
      double factor = beside / diagonal[i - 1];
      diagonal[i] -= factor * beside;
      right[i] += factor * right[i - 1];
    }
    result[n - 1] = right[n - 1] / diagonal[n - 1];
    for (int i = n - 2; i >= 0; i--) {
      result[i] = (right[i] + weight * conductance[i + 1] * result[i + 1]) / diagonal[i];
    }
  }

  /** Steady flow per unit of activity upstream, g/(m²·day). */
  public double steady() {
    return 1 / Arrays.stream(conductance).map(c -> 1 / c).sum();
  }
}
