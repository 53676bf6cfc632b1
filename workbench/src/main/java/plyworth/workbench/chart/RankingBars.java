package plyworth.workbench.chart;

import java.util.List;
import java.util.Optional;

/**
 * What the ranking chart shows: the value of each structure as a bar built from the contributions
 * of its criteria, beside the structure itself.
 *
 * @param title heading
 * @param note what is to be known of the whole, on a line below the heading
 * @param criteria name of each part of a bar, in the order they are stacked
 * @param bars bars from the top down; their names differ
 * @param words the language
 */
public record RankingBars(
    String title, String note, List<String> criteria, List<Bar> bars, ChartWords words) {

  /** Copies the lists. */
  public RankingBars {
    criteria = List.copyOf(criteria);
    bars = List.copyOf(bars);
  }

  /** The bar of that name. */
  public Optional<Bar> named(Object name) {
    return bars.stream().filter(bar -> bar.name().equals(name)).findFirst();
  }

  /** Thickness of the thickest structure, µm. */
  public double thickest() {
    return bars.stream().mapToDouble(Bar::gaugeUm).max().orElse(1);
  }

  /**
   * One structure.
   *
   * @param name its rank, or where it stands
   * @param plies its layers, outside first
   * @param contributions weight times value per criterion, as many as there are criteria
   * @param upTo value when every unknown turns out for the best; equal to the sum of the
   *     contributions when nothing is unknown
   * @param standing where it stands
   */
  public record Bar(
      String name, List<Ply> plies, List<Double> contributions, double upTo, Standing standing) {

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException when a contribution is negative or not finite
     */
    public Bar {
      plies = List.copyOf(plies);
      contributions = List.copyOf(contributions);
      for (double contribution : contributions) {
        if (!(contribution >= 0) || Double.isInfinite(contribution)) {
          throw new IllegalArgumentException("the contribution " + contribution + " is no length");
        }
      }
    }

    /** The value: the sum of the contributions. */
    public double value() {
      return contributions.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Whether something unknown could still raise the value. */
    public boolean open() {
      return upTo - value() > 1e-9;
    }

    /** Thickness, µm. */
    public double gaugeUm() {
      return plies.stream().mapToDouble(Ply::gaugeUm).sum();
    }
  }

  /**
   * A layer of a structure on the chart.
   *
   * @param label material and amount, short
   * @param full the layer in full
   * @param family family of its material
   * @param gaugeUm gauge, µm
   * @param repeated whether the bar above has the same layer
   */
  public record Ply(String label, String full, String family, double gaugeUm, boolean repeated) {}

  /** Where a structure stands. */
  public enum Standing {
    /** In the ranking. */
    RANKED,
    /** Today's structure, ranked like the others. */
    BASELINE,
    /** Today's structure, which a rule blocks or a limit excludes. */
    BASELINE_OUT
  }
}
