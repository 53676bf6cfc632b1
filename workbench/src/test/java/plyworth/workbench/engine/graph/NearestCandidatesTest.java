package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static plyworth.workbench.engine.graph.SmallLibrary.FILM;
import static plyworth.workbench.engine.graph.SmallLibrary.FOIL;
import static plyworth.workbench.engine.graph.SmallLibrary.GLUE;
import static plyworth.workbench.engine.graph.SmallLibrary.INK;
import static plyworth.workbench.engine.graph.SmallLibrary.PAPER;
import static plyworth.workbench.engine.graph.SmallLibrary.TIE;
import static plyworth.workbench.engine.graph.SmallLibrary.only;
import static plyworth.workbench.engine.graph.SmallLibrary.position;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.CompiledGraph;

class NearestCandidatesTest {

  /** Most candidates to try everything on. */
  private static final int MOST = 60;

  private static final Layer THICK_FOIL = Layer.web("foil", 9);

  private static final CompiledGraph GRAPH =
      SmallLibrary.graph(
              List.of(
                  position("print", Option.NOTHING, only(INK)),
                  position("web", only(PAPER), only(FOIL)),
                  position("bond", only(TIE), only(GLUE)),
                  position("inside", only(FILM), only(FOIL))))
          .compile();

  private static NearestCandidates around(CompiledGraph graph, Structure structure) {
    return new NearestCandidates(graph, structure, SmallLibrary.PROCESSES);
  }

  private static List<NearestCandidates.Near> all(CompiledGraph graph, Structure structure) {
    List<NearestCandidates.Near> all = new ArrayList<>();
    around(graph, structure).forEachRemaining(all::add);
    return all;
  }

  private static NearestCandidates.Near nearest(Layer... layers) {
    return around(GRAPH, Structure.of(layers)).next();
  }

  @Test
  void aCandidateIsNearestToItself() {
    assertThat(nearest(PAPER, TIE, FOIL).edits()).isEmpty();
    assertThat(nearest(PAPER, TIE, FOIL).path())
        .isEqualTo(GRAPH.pathOf(Structure.of(PAPER, TIE, FOIL)).orElseThrow());
  }

  @Test
  void anotherGaugeIsNearerThanAnotherLayer() {
    NearestCandidates.Near near = nearest(PAPER, TIE, THICK_FOIL);
    assertThat(GRAPH.structure(near.path())).isEqualTo(Structure.of(PAPER, TIE, FOIL));
    assertThat(near.edits()).extracting(LayerEdit::kind).containsExactly(LayerEdit.Kind.ADJUST);
    assertThat(near.edits().get(0).at()).isEqualTo(2);
    assertThat(near.edits().get(0).before()).hasValue(THICK_FOIL);
    assertThat(near.edits().get(0).after()).hasValue(FOIL);
  }

  @Test
  void theNearerGaugeIsNearer() {
    CompiledGraph graph =
        SmallLibrary.graph(
                List.of(
                    position("web", only(Layer.web("paper", 40)), only(Layer.web("paper", 65))),
                    position("inside", only(TIE))))
            .compile();
    NearestCandidates.Near near = around(graph, Structure.of(PAPER, TIE)).next();
    assertThat(near.edits().get(0).after()).hasValue(Layer.web("paper", 65));
  }

  @Test
  void whatIsMissingIsAddedAndWhatIsTooMuchGoes() {
    assertThat(nearest(PAPER, FOIL).edits())
        .extracting(LayerEdit::kind, LayerEdit::at)
        .containsExactly(tuple(LayerEdit.Kind.ADD, 1));
    assertThat(nearest(INK, INK, PAPER, TIE, FILM).edits())
        .extracting(LayerEdit::kind)
        .containsExactly(LayerEdit.Kind.TAKE_OUT);
  }

  @Test
  void aLayerOfAnotherRoleInItsPlaceIsTwoEdits() {
    assertThat(nearest(INK, INK, TIE, FOIL).edits())
        .extracting(LayerEdit::kind)
        .containsExactly(LayerEdit.Kind.TAKE_OUT, LayerEdit.Kind.ADD);
  }

  @Test
  void nothingIsNearWhereNothingIsOnOffer() {
    assertThat(around(CompiledGraph.empty(), Structure.of(PAPER))).isExhausted();
  }

  static LongStream seeds() {
    return LongStream.range(0, 200)
        .filter(seed -> graph(seed).count() <= MOST && graph(seed).count() > 0);
  }

  private static CompiledGraph graph(long seed) {
    RandomStudy study = RandomStudy.of(seed);
    return SmallLibrary.graph(study.positions(), study.rules().toArray(NeighbourRule[]::new))
        .compile();
  }

  /** A structure of few layers, now and then in another gauge than any that is offered. */
  private static Structure random(Random random) {
    List<Layer> layers = new ArrayList<>();
    int length = 1 + random.nextInt(5);
    while (layers.size() < length) {
      Layer layer = SmallLibrary.LAYERS.get(random.nextInt(SmallLibrary.LAYERS.size()));
      layers.add(random.nextInt(4) == 0 ? inGauge(layer, 3) : layer);
    }
    return new Structure(layers);
  }

  private static Layer inGauge(Layer layer, double amount) {
    return new Layer(
        layer.material(), amount, layer.unit(), layer.process(), layer.side(), layer.coverage());
  }

  /** Edits that turn one list into another, how many are no adjustment, and changes of gauge. */
  private record Way(int edits, int others, long change) implements Comparable<Way> {
    Way plus(int more, int other, long gauge) {
      return new Way(edits + more, others + other, change + gauge);
    }

    @Override
    public int compareTo(Way way) {
      return Comparator.comparingInt(Way::edits)
          .thenComparingInt(Way::others)
          .thenComparingLong(Way::change)
          .compare(this, way);
    }
  }

  /** Every way there is from one list to another, tried out. */
  private static Way fewest(List<Layer> from, List<Layer> to) {
    if (from.isEmpty() || to.isEmpty()) {
      return new Way(from.size() + to.size(), from.size() + to.size(), 0);
    }
    List<Layer> fewerFrom = from.subList(1, from.size());
    List<Layer> fewerTo = to.subList(1, to.size());
    Layer a = from.get(0);
    Layer b = to.get(0);
    Way replaced = fewest(fewerFrom, fewerTo);
    if (!a.equals(b)) {
      boolean sameRole = SmallLibrary.PROCESSES.role(a) == SmallLibrary.PROCESSES.role(b);
      boolean adjusted = inGauge(a, 1).equals(inGauge(b, 1));
      long change = Math.round(1000 * Math.abs(Math.log(a.amount() / b.amount())));
      int edits = sameRole ? 1 : 2;
      replaced = adjusted ? replaced.plus(1, 0, change) : replaced.plus(edits, edits, 0);
    }
    Way gone = fewest(fewerFrom, to).plus(1, 1, 0);
    Way added = fewest(from, fewerTo).plus(1, 1, 0);
    return List.of(replaced, gone, added).stream().min(Comparator.naturalOrder()).orElseThrow();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void allComeInOrderOfTheEditsThatTryingEverythingFinds(long seed) {
    CompiledGraph graph = graph(seed);
    Structure structure = random(new Random(seed));
    SortedMap<Way, List<Long>> byDistance = new TreeMap<>();
    for (long path = 0; path < graph.count(); path++) {
      Way way = fewest(structure.layers(), graph.structure(path).layers());
      byDistance.computeIfAbsent(way, w -> new ArrayList<>()).add(path);
    }
    List<NearestCandidates.Near> found = all(graph, structure);
    assertThat(found)
        .extracting(NearestCandidates.Near::path)
        .isEqualTo(byDistance.values().stream().flatMap(List::stream).toList());
    for (NearestCandidates.Near near : found) {
      List<Layer> layers = graph.structure(near.path()).layers();
      assertThat(applied(structure.layers(), near.edits())).isEqualTo(layers);
    }
    byDistance.forEach(
        (way, paths) ->
            assertThat(found)
                .filteredOn(near -> paths.contains(near.path()))
                .allMatch(near -> near.edits().size() == way.edits()));
  }

  /** A list with edits made, from the inside out so that the places stay true. */
  private static List<Layer> applied(List<Layer> layers, List<LayerEdit> edits) {
    List<Layer> changed = new ArrayList<>(layers);
    for (int e = edits.size() - 1; e >= 0; e--) {
      LayerEdit edit = edits.get(e);
      edit.before().ifPresent(before -> assertThat(changed.remove(edit.at())).isEqualTo(before));
      edit.after().ifPresent(after -> changed.add(edit.at(), after));
    }
    return changed;
  }
}
