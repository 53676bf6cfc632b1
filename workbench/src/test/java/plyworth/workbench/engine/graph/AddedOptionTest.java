package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static plyworth.workbench.engine.graph.SmallLibrary.FILM;
import static plyworth.workbench.engine.graph.SmallLibrary.FOIL;
import static plyworth.workbench.engine.graph.SmallLibrary.GLUE;
import static plyworth.workbench.engine.graph.SmallLibrary.INK;
import static plyworth.workbench.engine.graph.SmallLibrary.PAPER;
import static plyworth.workbench.engine.graph.SmallLibrary.PRIMER;
import static plyworth.workbench.engine.graph.SmallLibrary.TIE;
import static plyworth.workbench.engine.graph.SmallLibrary.VARNISH;
import static plyworth.workbench.engine.graph.SmallLibrary.only;
import static plyworth.workbench.engine.graph.SmallLibrary.position;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;

class AddedOptionTest {

  private static final List<Position> POSITIONS =
      List.of(
          position("print", Option.NOTHING, only(INK)),
          position("web", only(PAPER)),
          position("bond", Option.NOTHING, only(TIE)),
          position("inside", Option.NOTHING, only(FILM), only(FOIL)));

  private static List<AddedOption> smallest(Layer... layers) {
    return AddedOption.smallest(Structure.of(layers), POSITIONS);
  }

  @Test
  void whatIsOfferedNeedsNothing() {
    assertThat(smallest(INK, PAPER, TIE, FOIL)).isEmpty();
  }

  @Test
  void aStrangeLayerGoesWhereItsLikeStands() {
    assertThat(smallest(VARNISH, PAPER)).containsExactly(new AddedOption(0, only(VARNISH)));
    assertThat(smallest(INK, PAPER, Layer.gauge("resin", 20, "melt-bond"), FOIL))
        .containsExactly(new AddedOption(2, only(Layer.gauge("resin", 20, "melt-bond"))));
    assertThat(smallest(INK, Layer.web("paper", 80)))
        .containsExactly(new AddedOption(1, only(Layer.web("paper", 80))));
  }

  @Test
  void twoStrangeLayersAreTwoOptionsRatherThanOneOfThreeLayers() {
    assertThat(smallest(INK, Layer.web("paper", 80), TIE, Layer.web("foil", 9)))
        .extracting(AddedOption::position)
        .containsExactly(1, 3);
  }

  @Test
  void aLayerMissingWhereOneMustStandNeedsNothingToBeOffered() {
    assertThat(smallest(INK, TIE, FILM)).containsExactly(new AddedOption(1, Option.NOTHING));
  }

  @Test
  void aLayerBetweenTwoFullPositionsJoinsOneOfThem() {
    assertThat(smallest(INK, PRIMER, PAPER)).hasSize(1);
    assertThat(smallest(INK, PRIMER, PAPER).get(0).option().layers()).contains(PRIMER).hasSize(2);
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  private static Structure random(Random random) {
    List<Layer> layers = new ArrayList<>();
    int length = 1 + random.nextInt(4);
    while (layers.size() < length) {
      layers.add(SmallLibrary.LAYERS.get(random.nextInt(SmallLibrary.LAYERS.size())));
    }
    return new Structure(layers);
  }

  private static List<Position> with(List<Position> positions, List<AddedOption> added) {
    List<Position> extended = new ArrayList<>(positions);
    for (AddedOption addition : added) {
      Position position = extended.get(addition.position());
      List<Option> more = new ArrayList<>(position.options());
      more.add(addition.option());
      extended.set(addition.position(), new Position(position.title(), more));
    }
    return extended;
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void withTheOptionsAddedAndTheObjectingRulesLiftedTheStructureIsOnOffer(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    Structure structure = random(new Random(seed));
    List<Position> extended =
        with(study.positions(), AddedOption.smallest(structure, study.positions()));
    Set<String> broken = new TreeSet<>();
    Objections.of(
            structure, extended, study.rules(), SmallLibrary.MATERIALS, SmallLibrary.PROCESSES)
        .forEach(objection -> broken.add(objection.rule()));
    assertThat(broken).doesNotContain("");
    assertThat(offers(extended, without(study.rules(), broken), structure)).isTrue();
    for (String kept : broken) {
      Set<String> others = new TreeSet<>(broken);
      others.remove(kept);
      assertThat(offers(extended, without(study.rules(), others), structure)).as(kept).isFalse();
    }
  }

  private static List<NeighbourRule> without(List<NeighbourRule> rules, Set<String> ids) {
    return rules.stream().filter(rule -> !ids.contains(rule.id())).toList();
  }

  private static boolean offers(
      List<Position> positions, List<NeighbourRule> rules, Structure structure) {
    return SmallLibrary.graph(positions, rules.toArray(NeighbourRule[]::new))
        .compile()
        .pathOf(structure)
        .isPresent();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noWayToCutTheStructureNeedsLess(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    Structure structure = random(new Random(seed));
    long found = 0;
    for (AddedOption added : AddedOption.smallest(structure, study.positions())) {
      found += AddedOption.cost(study.positions().get(added.position()), added.option());
    }
    assertThat(found).isEqualTo(least(study.positions(), structure.layers()));
  }

  /** The least cost of all ways to cut a list into one run for each position. */
  private static long least(List<Position> positions, List<Layer> layers) {
    if (positions.isEmpty()) {
      return layers.isEmpty() ? 0 : Long.MAX_VALUE / 4;
    }
    long least = Long.MAX_VALUE;
    for (int end = 0; end <= layers.size(); end++) {
      long here = AddedOption.cost(positions.get(0), new Option(layers.subList(0, end)));
      List<Position> inner = positions.subList(1, positions.size());
      least = Math.min(least, here + least(inner, layers.subList(end, layers.size())));
    }
    return least;
  }

  @Test
  void gluedStructuresAreAdded() {
    assertThat(smallest(PAPER, GLUE, FOIL)).containsExactly(new AddedOption(2, only(GLUE)));
  }
}
