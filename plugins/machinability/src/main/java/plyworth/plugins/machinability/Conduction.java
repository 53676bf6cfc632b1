package plyworth.plugins.machinability;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plyworth.shared.brief.Machine.SealZone;

/**
 * One-dimensional conduction through all webs between two hot jaws, by finite volumes; the time
 * steps are implicit, four Euler half steps at first, then trapezoidal (Rannacher's start of the
 * scheme of Crank and Nicolson; from memory). Temperatures are shares of the step from start to
 * jaw.
 */
final class Conduction {

  private static final int LEAST_CELLS = 3;

  private final double[] capacity;
  private final double[] conductance;
  private final int interfaceCell;
  private final double outerHalf;
  private final double innerHalf;

  /**
   * Missing share of the step over time.
   *
   * @param seconds times, from 0
   * @param missing share still missing at the interface
   */
  record Course(double[] seconds, double[] missing) {

    /** Time at which the missing share falls to {@code share}, s; NaN when it never does. */
    double time(double share) {
      for (int i = 1; i < seconds.length; i++) {
        if (missing[i] <= share) {
          double before = Math.log(missing[i - 1] / share);
          double part = before / Math.log(missing[i - 1] / missing[i]);
          return seconds[i - 1] + part * (seconds[i] - seconds[i - 1]);
        }
      }
      return Double.NaN;
    }
  }

  private Conduction(List<double[]> cells, int interfaceCell, double contact) {
    int n = cells.size();
    this.interfaceCell = interfaceCell;
    capacity = new double[n];
    conductance = new double[n + 1];
    for (int i = 0; i < n; i++) {
      capacity[i] = cells.get(i)[1];
      double outer = i == 0 ? contact : cells.get(i - 1)[0] / 2;
      conductance[i] = 1 / (outer + cells.get(i)[0] / 2);
    }
    conductance[n] = 1 / (contact + cells.get(n - 1)[0] / 2);
    outerHalf = 2 / cells.get(interfaceCell - 1)[0];
    innerHalf = 2 / cells.get(interfaceCell)[0];
  }

  /**
   * The webs of a seal zone.
   *
   * @param layers one laminate, outside first
   * @param contact contact resistance between jaw and web, m²·K/W
   * @param sameWay as in {@link SealStack#of}
   * @param fineness cells that share the resistance of one web
   */
  static Conduction of(
      List<LayerFigures> layers, double contact, SealZone zone, boolean sameWay, int fineness) {
    List<double[]> inwards = cells(layers, fineness);
    List<double[]> outwards = new ArrayList<>(inwards);
    Collections.reverse(outwards);
    List<double[]> cells = new ArrayList<>();
    if (zone == SealZone.ONE_ON_TWO) {
      cells.addAll(sameWay ? inwards : outwards);
    }
    cells.addAll(inwards);
    int at = cells.size();
    cells.addAll(outwards);
    if (zone == SealZone.ONE_ON_THREE) {
      cells.addAll(inwards);
      cells.addAll(outwards);
    }
    return new Conduction(cells, at, contact);
  }

  /** The warming of the interface over a duration in equal steps. */
  Course course(double duration, int steps) {
    double step = duration / steps;
    double[] temperature = new double[capacity.length];
    double[] seconds = new double[steps + 1];
    double[] missing = new double[steps + 1];
    missing[0] = 1;
    for (int i = 1; i <= steps; i++) {
      if (i <= 2) {
        advance(temperature, step / 2, 1);
        advance(temperature, step / 2, 1);
      } else {
        advance(temperature, step, 0.5);
      }
      seconds[i] = i * step;
      missing[i] = 1 - atInterface(temperature);
    }
    return new Course(seconds, missing);
  }

  private double atInterface(double[] temperature) {
    double outer = temperature[interfaceCell - 1];
    double inner = temperature[interfaceCell];
    return (outerHalf * outer + innerHalf * inner) / (outerHalf + innerHalf);
  }

  /** One step: implicit to the share {@code weight}, solved by Thomas's elimination. */
  private void advance(double[] temperature, double step, double weight) {
    int n = capacity.length;
    double[] upper = new double[n];
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      double g = conductance[i];
      double h = conductance[i + 1];
      double before = i == 0 ? 1 : temperature[i - 1];
      double after = i == n - 1 ? 1 : temperature[i + 1];
      double flow = g * (before - temperature[i]) + h * (after - temperature[i]);
      double jaw = weight * ((i == 0 ? g : 0) + (i == n - 1 ? h : 0));
      double c = capacity[i] / step;
      double lower = i == 0 ? 0 : weight * g;
      double diagonal = c + weight * (g + h) - (i == 0 ? 0 : lower * upper[i - 1]);
      double known = c * temperature[i] + (1 - weight) * flow + jaw;
      upper[i] = i == n - 1 ? 0 : weight * h / diagonal;
      right[i] = (known + (i == 0 ? 0 : lower * right[i - 1])) / diagonal;
    }
    temperature[n - 1] = right[n - 1];
    for (int i = n - 2; i >= 0; i--) {
      temperature[i] = right[i] + upper[i] * temperature[i + 1];
    }
  }

  /** Cells of one laminate, {resistance, capacity} each, as many as its resistance asks for. */
  private static List<double[]> cells(List<LayerFigures> layers, int fineness) {
    double total = layers.stream().mapToDouble(LayerFigures::resistance).sum();
    List<double[]> cells = new ArrayList<>();
    for (LayerFigures layer : layers) {
      int n = LEAST_CELLS + (int) (fineness * layer.resistance() / total);
      for (int i = 0; i < n; i++) {
        cells.add(new double[] {layer.resistance() / n, layer.capacity() / n});
      }
    }
    return cells;
  }
}
