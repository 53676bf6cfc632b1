package plyworth.plugins.barrier.diffusion;

import java.util.List;

/**
 * Time lag of layers in series, and the lead of their upstream side.
 *
 * <p>With a the steady activity, 1 upstream and 0 downstream, and a, b its values at the faces of
 * layer i: θ = R·Σ Ci·[(a + b)/2 − (a² + a·b + b²)/3], R the sum of the resistances and Ci the
 * capacity (mean action time weighted by capacity; derived here; literature on layered time scales:
 * Carr, arXiv 1801.08213, abstract). One layer gives L²/6D (Crank, Mathematics of Diffusion, from
 * memory), and the direction makes no difference.
 */
public final class TimeLag {

  private TimeLag() {}

  /** Time lag, days: by this much what arrives downstream is late in the long run. */
  public static double days(List<DiffusionLayer> layers) {
    double sum = 0;
    for (double share : byLayer(layers)) {
      sum += share;
    }
    return sum;
  }

  /** The part of each layer in the time lag, days. */
  public static double[] byLayer(List<DiffusionLayer> layers) {
    double resistance = layers.stream().mapToDouble(DiffusionLayer::resistance).sum();
    double[] days = new double[layers.size()];
    double a = 1;
    for (int i = 0; i < days.length; i++) {
      DiffusionLayer layer = layers.get(i);
      double b = a - layer.resistance() / resistance;
      days[i] = resistance * layer.capacity() * ((a + b) / 2 - (a * a + a * b + b * b) / 3);
      a = b;
    }
    return days;
  }

  /** What the layers hold in the steady state, g/m² per unit of activity upstream. */
  public static double held(List<DiffusionLayer> layers) {
    double resistance = layers.stream().mapToDouble(DiffusionLayer::resistance).sum();
    double held = 0;
    double a = 1;
    for (DiffusionLayer layer : layers) {
      double b = a - layer.resistance() / resistance;
      held += layer.capacity() * (a + b) / 2;
      a = b;
    }
    return held;
  }
}
