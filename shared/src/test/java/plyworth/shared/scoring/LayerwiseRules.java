package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** Rules on the layerwise form of finished structures. */
final class LayerwiseRules {

  private LayerwiseRules() {}

  static void offeredAlwaysOrNever(List<Trial> trials) {
    assertThat(trials.stream().map(t -> t.scorer().layerwise().isPresent()).distinct())
        .as("whether a layerwise form is offered, over all briefs")
        .hasSize(1);
  }

  static void contributionsJoinInAnyBracketing(List<Trial> trials, List<Structure> structures) {
    Random random = new Random(1);
    for (Trial trial : trials) {
      Columns columns = new Columns(trial);
      for (Structure structure : structures) {
        List<double[]> states = contributions(columns, structure);
        double[] fold = states.stream().reduce(columns::join).orElseThrow();
        assertThat(Nearly.equal(bracketed(columns, states, random), fold))
            .as("any bracketing gives the same, " + trial.of(structure))
            .isTrue();
        for (double[] state : states) {
          assertThat(Nearly.equal(columns.join(columns.neutral(), state), state))
              .as("neutral outside, " + trial.of(structure))
              .isTrue();
          assertThat(Nearly.equal(columns.join(state, columns.neutral()), state))
              .as("neutral inside, " + trial.of(structure))
              .isTrue();
        }
      }
    }
  }

  private static List<double[]> contributions(Columns columns, Structure structure) {
    List<double[]> states = new ArrayList<>();
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      states.add(columns.contribution(layer, outer));
      outer = layer;
    }
    return states;
  }

  private static double[] bracketed(Columns columns, List<double[]> states, Random random) {
    if (states.size() == 1) {
      return states.get(0);
    }
    int cut = 1 + random.nextInt(states.size() - 1);
    return columns.join(
        bracketed(columns, states.subList(0, cut), random),
        bracketed(columns, states.subList(cut, states.size()), random));
  }

  static void agreesWithTheWholeStructure(List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      Columns columns = new Columns(trial);
      Block block =
          columns.finish(structures.stream().map(s -> columns.fold(s.layers(), null)).toList());
      for (int i = 0; i < structures.size(); i++) {
        Assessment whole = trial.score(structures.get(i));
        String where = trial.of(structures.get(i));
        figuresAgree(where, trial.plugin(), whole, block, i);
        if (!block.undecided[i]) {
          blocksAgree(where, trial.plugin(), whole, block.blocked[i]);
        }
        providedAgree(where, trial.plugin(), whole, block, i);
      }
    }
  }

  static void formForOneCriterionAgreesWithTheFormForAll(
      List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      Columns all = new Columns(trial);
      Block whole = all.finish(structures.stream().map(s -> all.fold(s.layers(), null)).toList());
      for (int c = 0; c < trial.plugin().criteria().size(); c++) {
        String id = trial.plugin().criteria().get(c).id();
        Columns one = all.only(id);
        Block alone = one.finish(structures.stream().map(s -> one.fold(s.layers(), null)).toList());
        String where = id + " alone, " + trial.name();
        for (int i = 0; i < structures.size(); i++) {
          assertThat(row(alone, c, i)).as(where).isEqualTo(row(whole, c, i));
        }
        for (int i = 1; i < structures.size(); i++) {
          List<Structure> ends = structures.subList(i - 1, i + 1);
          assertThat(interval(trial, one, ends, c))
              .as("bounds of " + where)
              .isEqualTo(interval(trial, all, ends, c));
        }
      }
    }
  }

  /** In the form for all criteria and in that for one. */
  static void criteriaSaidToAddUpAreSums(List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      Columns all = new Columns(trial);
      for (int c = 0; c < trial.plugin().criteria().size(); c++) {
        String id = trial.plugin().criteria().get(c).id();
        isItsSum(trial, all, c, structures);
        isItsSum(trial, all.only(id), c, structures);
      }
    }
  }

  private static void isItsSum(
      Trial trial, Columns columns, int criterion, List<Structure> structures) {
    OptionalInt component = columns.sumOf(trial.plugin().criteria().get(criterion).id());
    if (component.isEmpty()) {
      return;
    }
    String where = trial.plugin().criteria().get(criterion).id() + ", " + trial.name();
    assertThat(columns.joinOf(component.getAsInt())).as("join of " + where).isEqualTo(Join.SUM);
    List<double[]> states = structures.stream().map(s -> columns.fold(s.layers(), null)).toList();
    Block block = columns.finish(states);
    for (int i = 0; i < states.size(); i++) {
      Double sum = states.get(i)[component.getAsInt()];
      assertThat(block.low[criterion][i]).as("the sum said to be " + where).isEqualTo(sum);
      assertThat(block.high[criterion][i]).as("the sum said to be " + where).isEqualTo(sum);
    }
  }

  /** What is said of a candidate; of one that is blocked only that it is. */
  private static List<Object> row(Block block, int criterion, int row) {
    List<Object> said = new ArrayList<>();
    said.add(block.blocked[row]);
    said.add(block.undecided[row]);
    if (block.blocked[row] == 0) {
      said.add(block.low[criterion][row]);
      said.add(block.high[criterion][row]);
      Arrays.stream(block.provided).forEach(figures -> said.add(figures[row]));
    }
    return said;
  }

  /** What can become between the states of two structures. */
  private static List<Object> interval(
      Trial trial, Columns columns, List<Structure> ends, int criterion) {
    double[] one = columns.fold(ends.get(0).layers(), null);
    double[] other = columns.fold(ends.get(1).layers(), null);
    double[] low = new double[one.length];
    double[] high = new double[one.length];
    Arrays.setAll(low, k -> Math.min(one[k], other[k]));
    Arrays.setAll(high, k -> Math.max(one[k], other[k]));
    double[] needed = trial.neededColumn();
    BoundsBlock block = columns.bound(low, high, needed, needed);
    List<Object> interval = new ArrayList<>();
    interval.add(block.low[criterion][0]);
    interval.add(block.high[criterion][0]);
    interval.add(block.mustBlock[0]);
    interval.add(block.mayBlock[0]);
    Arrays.stream(block.providedLow).forEach(figures -> interval.add(figures[0]));
    Arrays.stream(block.providedHigh).forEach(figures -> interval.add(figures[0]));
    return interval;
  }

  private static void figuresAgree(
      String where, ScoringPlugin plugin, Assessment whole, Block block, int row) {
    for (int c = 0; c < plugin.criteria().size(); c++) {
      String id = plugin.criteria().get(c).id();
      Outcome outcome = whole.outcomes().get(id);
      double low = block.low[c][row];
      double high = block.high[c][row];
      String figures = outcome + " against " + low + " … " + high;
      if (outcome instanceof Outcome.Scored scored) {
        boolean known = !Double.isNaN(low) && !Double.isNaN(high);
        assertThat(known && Nearly.encloses(low, high, scored.figure()))
            .as(id + " of the whole structure against layerwise: " + figures + ", " + where)
            .isTrue();
      } else if (outcome instanceof Outcome.DataMissing) {
        assertThat(Double.isNaN(low) && Double.isNaN(high))
            .as(id + " is unknown both ways: " + figures + ", " + where)
            .isTrue();
      }
    }
  }

  private static void blocksAgree(String where, ScoringPlugin plugin, Assessment whole, long bits) {
    Set<String> declared =
        plugin.blockingRules().stream().map(BlockingRule::id).collect(Collectors.toSet());
    Set<String> found =
        whole.findings().stream()
            .filter(f -> f.level() == Finding.Level.BLOCKS && declared.contains(f.rule()))
            .map(Finding::rule)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> set = new TreeSet<>();
    for (int i = 0; i < 64; i++) {
      if ((bits >> i & 1) == 1) {
        assertThat(i).as("blocking bit, " + where).isLessThan(plugin.blockingRules().size());
        set.add(plugin.blockingRules().get(i).id());
      }
    }
    assertThat(set).as("rules that block layerwise, " + where).isEqualTo(found);
  }

  private static void providedAgree(
      String where, ScoringPlugin plugin, Assessment whole, Block block, int row) {
    for (int p = 0; p < plugin.provides().size(); p++) {
      Figure figure = plugin.provides().get(p);
      double layerwise = block.provided[p][row];
      assertThat(Nearly.equal(layerwise, whole.provided().getOrDefault(figure, Double.NaN)))
          .as(figure + " provided: " + layerwise + " against " + whole.provided() + ", " + where)
          .isTrue();
    }
  }
}
