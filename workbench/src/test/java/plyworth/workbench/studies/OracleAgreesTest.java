package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.Oracle;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.graph.BruteForce;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.ranking.GroupCounts;

/**
 * Thinned, every study is worked out a second time in the plainest way: every combination of
 * options written down and checked rule by rule, every structure scored whole, all of them sorted.
 */
class OracleAgreesTest {

  static final List<String> STUDIES = Examples.ALL;

  /** What a float keeps of a figure. */
  private static final double NARROWED = 3e-7;

  /** What narrowed figures may change in a value. */
  private static final double VALUE = 3e-6;

  @ParameterizedTest
  @FieldSource("STUDIES")
  void theCandidatesAreThoseThatBruteForceFinds(String name) {
    Compiled compiled = Examples.thinned(name).compiled();
    Study study = compiled.prepared().study();
    Set<List<Layer>> expected =
        new BruteForce(
                study.positions(), study.rules(), study.materialsAtHand(), study.processesAtHand())
            .candidates();
    Set<List<Layer>> found = new HashSet<>();
    for (long path = 0; path < compiled.paths().count(); path++) {
      found.add(compiled.paths().structure(path).layers());
    }
    assertThat(compiled.paths().count()).isEqualTo(found.size()).isGreaterThan(500);
    assertThat(found).isEqualTo(expected);
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void figuresGroupsAndOrderAreThoseOfTheOracle(String name) {
    Desk desk = Examples.thinned(name);
    Study study = desk.study();
    Oracle oracle =
        new Oracle(desk.compiled().prepared().bound().plugins(), study.valueFunctions());
    List<Oracle.Scored> all = scoredOneByOne(desk.compiled(), oracle);
    CandidateTable table =
        Tabulation.of(desk.compiled().paths(), desk.compiled().prepared().bound())
            .run(Progress.NONE);
    all.forEach(scored -> assertRow(table, scored));
    for (Weighting weighting : study.weightings()) {
      Ranked ranked = desk.ranked(weighting.name());
      assertCounts(ranked.ranking().counts(), oracle, all, study);
      assertOrder(ranked, oracle.rank(all, weighting.weights(), study.limits()));
    }
  }

  private static List<Oracle.Scored> scoredOneByOne(Compiled compiled, Oracle oracle) {
    List<Oracle.Scored> all = new ArrayList<>();
    for (long path = 0; path < compiled.paths().count(); path++) {
      Structure structure = compiled.paths().structure(path);
      all.add(oracle.score(path, structure));
    }
    return all;
  }

  /** Of a blocked candidate the table says that it is blocked, and no more. */
  private static void assertRow(CandidateTable table, Oracle.Scored scored) {
    Chunk chunk = table.chunkOf(scored.path());
    int row = CandidateTable.rowOf(scored.path());
    for (int c = 0; c < table.criteria().size(); c++) {
      if (chunk.has(c) && !scored.blocked()) {
        double figure = scored.figures().get(table.criteria().get(c).id());
        double slack = NARROWED * Math.abs(figure);
        assertThat(chunk.low(c)[row] <= figure + slack && chunk.high(c)[row] >= figure - slack)
            .as(
                "%s of %s: %s in %s to %s",
                table.criteria().get(c).id(),
                scored.structure(),
                figure,
                chunk.low(c)[row],
                chunk.high(c)[row])
            .isTrue();
      }
    }
    assertThat(chunk.codes()[row] == Chunk.BLOCKED)
        .as("whether %s is blocked", scored.structure())
        .isEqualTo(scored.blocked());
  }

  private static void assertCounts(
      GroupCounts counts, Oracle oracle, List<Oracle.Scored> all, Study study) {
    long[] expected = new long[Oracle.Standing.values().length];
    for (Oracle.Scored scored : all) {
      expected[oracle.judge(scored, Map.of(), study.limits()).standing().ordinal()]++;
    }
    assertThat(counts.open()).isZero();
    assertThat(counts.ranked()).isEqualTo(expected[Oracle.Standing.RANKED.ordinal()]);
    assertThat(counts.cannotBeJudged())
        .isEqualTo(expected[Oracle.Standing.CANNOT_BE_JUDGED.ordinal()]);
    assertThat(counts.excluded()).isEqualTo(expected[Oracle.Standing.EXCLUDED.ordinal()]);
    assertThat(counts.blocked()).isEqualTo(expected[Oracle.Standing.BLOCKED.ordinal()]);
  }

  private static void assertOrder(Ranked ranked, List<Oracle.Judged> expected) {
    for (int i = 0; i < ranked.best().size(); i++) {
      Oracle.Judged judged = expected.get(i);
      assertThat(ranked.best().get(i).value()).isCloseTo(judged.value(), within(VALUE));
      boolean alone =
          Math.abs(expected.get(i + 1).value() - judged.value()) > VALUE
              && (i == 0 || Math.abs(expected.get(i - 1).value() - judged.value()) > VALUE);
      if (alone) {
        assertThat(ranked.best().get(i).path()).isEqualTo(judged.scored().path());
      }
    }
  }
}
