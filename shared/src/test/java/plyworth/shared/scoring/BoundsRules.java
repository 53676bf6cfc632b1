package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** Rules on bounds of unfinished structures. */
final class BoundsRules {

  private static final int SPLITS = 60;
  private static final int ALTERNATIVES = 4;

  /** Ends of the intervals of the needed figures, as factors of their sample figures. */
  private static final double SMALLEST = 0.8;

  private static final double LARGEST = 1.2;

  private BoundsRules() {}

  /** Splits structures at random and lets several inner parts follow one outer part. */
  static void boundsEncloseWhatCanStillBecome(List<Trial> trials, List<Structure> structures) {
    Random random = new Random(2);
    for (Trial trial : trials) {
      for (int i = 0; i < SPLITS; i++) {
        List<Layer> outer = head(pick(structures, random), random);
        List<List<Layer>> inner = new ArrayList<>();
        for (int k = 0; k < ALTERNATIVES; k++) {
          inner.add(tail(pick(structures, random), random));
        }
        new Split(trial, outer, inner).check(random);
      }
    }
  }

  private static Structure pick(List<Structure> structures, Random random) {
    return structures.get(random.nextInt(structures.size()));
  }

  private static List<Layer> head(Structure structure, Random random) {
    return structure.layers().subList(0, 1 + random.nextInt(structure.layers().size()));
  }

  /** May be empty: nothing more follows. */
  private static List<Layer> tail(Structure structure, Random random) {
    int size = structure.layers().size();
    return structure.layers().subList(random.nextInt(size + 1), size);
  }

  private record Split(Trial trial, List<Layer> outer, List<List<Layer>> inner) {

    void check(Random random) {
      Columns columns = new Columns(trial);
      double[] head = columns.fold(outer, null);
      List<double[]> tails =
          inner.stream().map(i -> columns.fold(i, outer.get(outer.size() - 1))).toList();
      double[] low = tails.get(0).clone();
      double[] high = tails.get(0).clone();
      tails.forEach(t -> hull(columns, low, high, t));
      double[] needed = trial.neededColumn();
      BoundsBlock bounds =
          bounds(columns, head, low, high, scaled(needed, SMALLEST), scaled(needed, LARGEST));
      Block finished =
          columns.finish(
              tails.stream().map(t -> columns.join(head, t)).toList(),
              tails.stream()
                  .map(t -> scaled(needed, random.nextDouble(SMALLEST, LARGEST)))
                  .toList());
      for (int i = 0; i < tails.size(); i++) {
        String where =
            trial.name() + ", " + outer + " followed by " + inner.get(i) + ", one of " + inner;
        figuresLieWithin(where, bounds, finished, i);
        if (!finished.undecided[i]) {
          blocksLieWithin(where, bounds, finished.blocked[i]);
        }
      }
    }

    private void figuresLieWithin(String where, BoundsBlock bounds, Block finished, int row) {
      for (int c = 0; c < trial.plugin().criteria().size(); c++) {
        String id = trial.plugin().criteria().get(c).id();
        if (!trial.scorer().notApplicable().containsKey(id)) {
          boolean blocked = finished.blocked[row] != 0;
          double low = bounds.low[c][0];
          double high = bounds.high[c][0];
          within(id + ", " + where, blocked ? least(low) : low, high, finished.low[c][row]);
          within(id + ", " + where, low, blocked ? most(high) : high, finished.high[c][row]);
        }
      }
      for (int p = 0; p < trial.plugin().provides().size(); p++) {
        within(
            trial.plugin().provides().get(p) + ", " + where,
            bounds.providedLow[p][0],
            bounds.providedHigh[p][0],
            finished.provided[p][row]);
      }
    }

    /**
     * The figures of a structure that is blocked may stay wide, as long as they meet the bounds.
     */
    private static double least(double low) {
      return Double.isNaN(low) ? low : Double.NEGATIVE_INFINITY;
    }

    private static double most(double high) {
      return Double.isNaN(high) ? high : Double.POSITIVE_INFINITY;
    }

    private static void within(String what, double low, double high, double figure) {
      assertThat(Nearly.encloses(low, high, figure))
          .as(figure + " lies within the bounds " + low + " … " + high + " of " + what)
          .isTrue();
    }

    private static void blocksLieWithin(String where, BoundsBlock bounds, long actual) {
      assertThat(bounds.mustBlock[0] & ~actual)
          .as("bits said to block for certain, " + where)
          .isZero();
      assertThat(actual & ~bounds.mayBlock[0]).as("bits that block unforeseen, " + where).isZero();
    }
  }

  private static void hull(Columns columns, double[] low, double[] high, double[] other) {
    int at = 0;
    for (StatePart part : columns.parts()) {
      part.join().hull(low, high, other, other, at);
      at += part.join().size();
    }
  }

  private static double[] scaled(double[] needed, double factor) {
    return Arrays.stream(needed).map(figure -> figure * factor).toArray();
  }

  private static BoundsBlock bounds(
      Columns columns,
      double[] head,
      double[] innerLow,
      double[] innerHigh,
      double[] neededLow,
      double[] neededHigh) {
    double[] low = columns.neutral();
    double[] high = columns.neutral();
    int at = 0;
    for (StatePart part : columns.parts()) {
      part.join().joinBounds(head, head, innerLow, innerHigh, low, high, at);
      at += part.join().size();
    }
    return columns.bound(low, high, neededLow, neededHigh);
  }
}
