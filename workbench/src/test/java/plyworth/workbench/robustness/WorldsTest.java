package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.store.StudyFile;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.ValueModel;

/** What structures are worth in possible worlds, against scoring each in full in each world. */
class WorldsTest {

  private static final int STRUCTURES = 40;
  private static final int WORLDS = 4;

  /** What the middle of an enclosed value may be off by. */
  private static final double OFF = WorldValues.NARROW / 2 + 1e-9;

  private static Compiled compiled(Study study) {
    return Compiled.of(Prepared.of(study, SmallStudy.CATALOG), () -> false);
  }

  private static Compiled example(String name) {
    return compiled(StudyFile.open(Path.of("..", "studies", name + StudyFile.SUFFIX)).study());
  }

  private static ValueModel model(Compiled compiled) {
    Prepared prepared = compiled.prepared();
    Study study = prepared.study();
    return ValueModel.of(prepared.bound().criteria(), study, study.activeWeighting());
  }

  private static List<Structure> anyOf(Compiled compiled, int many) {
    SplittableRandom random = new SplittableRandom(many);
    List<Structure> structures = new ArrayList<>();
    random
        .longs(many, 0, compiled.paths().count())
        .forEach(path -> structures.add(compiled.paths().structure(path)));
    return structures;
  }

  /** Scores every structure in full, criterion by criterion as a ranking values it. */
  private static World inFull(
      Compiled compiled, ValueModel model, List<Structure> structures, long seed) {
    Prepared prepared = compiled.prepared();
    BoundPlugins bound = BoundPlugins.bind(prepared.catalog(), prepared.study(), Draw.random(seed));
    double[][] values = new double[model.criteria().size()][structures.size()];
    boolean[] ranked = new boolean[structures.size()];
    for (int i = 0; i < ranked.length; i++) {
      Map<String, Assessment> assessments = bound.score(structures.get(i));
      double[] figures = bound.figures(assessments);
      boolean blocked = assessments.values().stream().anyMatch(Assessment::blocked);
      ranked[i] = model.group(figures, blocked) == Group.RANKED;
      List<Valuation.Part> parts = model.value(figures).parts();
      for (int c = 0; c < values.length; c++) {
        values[c][i] = parts.get(c).valueLow();
      }
    }
    return new World(values, ranked);
  }

  private static void assertAgree(Compiled compiled, List<Structure> structures, long seed) {
    ValueModel model = model(compiled);
    World world = new Worlds(compiled.prepared(), model, structures).apply(seed);
    World expected = inFull(compiled, model, structures, seed);
    assertThat(world.ranked()).isEqualTo(expected.ranked());
    for (int c = 0; c < expected.values().length; c++) {
      if (model.criteria().get(c).counts()) {
        for (int i = 0; i < structures.size(); i++) {
          if (expected.ranked()[i]) {
            assertThat(world.values()[c][i])
                .as(model.criteria().get(c).criterion().id() + " of " + structures.get(i))
                .isCloseTo(expected.values()[c][i], within(OFF));
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "sugar-stick",
        "seasoning-stick",
        "seasoning-stick-by-gram",
        "isopropanol-wipe",
        "freeze-dried-snack"
      })
  void layerByLayerAWorldSaysWhatScoringEachStructureInFullSays(String study) {
    Compiled compiled = example(study);
    List<Structure> structures = anyOf(compiled, STRUCTURES);
    for (long seed = 1; seed <= WORLDS; seed++) {
      assertAgree(compiled, structures, seed);
    }
  }

  @Test
  void aWorldDoesNotDependOnTheOneBeforeNorOnWhoElseIsListed() {
    Compiled compiled = compiled(SmallStudy.few());
    ValueModel model = model(compiled);
    List<Structure> structures = new ArrayList<>(anyOf(compiled, STRUCTURES));
    Worlds worlds = new Worlds(compiled.prepared(), model, structures);
    worlds.apply(5);
    World after = worlds.apply(6);
    Collections.reverse(structures);
    List<Structure> half = structures.subList(0, STRUCTURES / 2);
    World alone = new Worlds(compiled.prepared(), model, half).apply(6);
    int last = STRUCTURES - 1;
    for (int i = 0; i < half.size(); i++) {
      assertThat(alone.ranked()[i]).isEqualTo(after.ranked()[last - i]);
      for (int c = 0; c < alone.values().length; c++) {
        if (alone.values()[c] != null && alone.ranked()[i]) {
          assertThat(alone.values()[c][i]).isEqualTo(after.values()[c][last - i]);
        }
      }
    }
  }

  @Test
  void aStructureThatIsListedTwiceIsWorthTheSameTwice() {
    Compiled compiled = compiled(SmallStudy.few());
    Structure structure = anyOf(compiled, 1).get(0);
    Worlds worlds = new Worlds(compiled.prepared(), model(compiled), List.of(structure, structure));
    World world = worlds.apply(3);
    assertThat(world.ranked()[0]).isEqualTo(world.ranked()[1]);
    for (double[] column : world.values()) {
      assertThat(column == null || column[0] == column[1]).isTrue();
    }
  }
}
