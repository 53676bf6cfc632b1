package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.store.StudyFile;
import plyworth.shared.structure.NeighbourRules;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.Valuation;

/** The example studies are files in good order. */
class StudyFilesTest {

  static final List<String> STUDIES = Examples.ALL;

  private static final List<String> PRESETS =
      List.of("balanced", "cost-led", "protection-led", "sustainability-led");

  @Test
  void thereAreFiveStudies() throws IOException {
    try (Stream<Path> files = Files.list(Examples.FOLDER)) {
      assertThat(files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".json")))
          .containsExactlyInAnyOrderElementsOf(
              STUDIES.stream().map(s -> s + StudyFile.SUFFIX).toList());
    }
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void aStudyWrittenAgainIsTheSameBytes(String name) throws IOException {
    assertThat(StudyFile.write(Examples.study(name)))
        .isEqualTo(Files.readString(Examples.file(name)));
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void aStudyAsksWhetherTheFoilOfTodayCanGo(String name) {
    assertThat(Examples.whole(name).baseline().hasFoil()).isTrue();
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void aStudyCarriesTheRulesOfTheTrade(String name) {
    assertThat(Examples.study(name).rules()).isEqualTo(NeighbourRules.standard());
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void aStudyHasFourWeightingsInTheWordsOfTheTrade(String name) {
    assertThat(Examples.study(name).weightings())
        .extracting(Weighting::name)
        .containsExactlyElementsOf(PRESETS);
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void everyPluginScoresTheStructureOfTodayAndNoneBlocksIt(String name) {
    assertThat(Examples.CATALOG.faults()).isEmpty();
    ScoredStructure baseline = Examples.whole(name).baseline();
    assertThat(baseline.sheet().assessments())
        .containsOnlyKeys(
            "barrier", "cost", "machinability", "print-method", "recyclability", "supply");
    assertThat(baseline.blocks()).isEmpty();
    assertThat(baseline.sheet().group()).isEqualTo(Group.RANKED);
  }

  @ParameterizedTest
  @FieldSource("STUDIES")
  void nothingThatWeighsIsUnknownOfTodayOrOfTheTenBest(String name) {
    Desk desk = Examples.LARGE.contains(name) ? Examples.thinned(name) : Examples.whole(name);
    for (String weighting : PRESETS) {
      var ranked = desk.ranked(weighting);
      assertThat(ranked.baseline().valuation().parts()).allMatch(StudyFilesTest::known);
      assertThat(ranked.best()).hasSize(10);
      for (var candidate : ranked.best()) {
        assertThat(candidate.valuation().parts()).allMatch(StudyFilesTest::known);
      }
    }
  }

  private static boolean known(Valuation.Part part) {
    return part.known() || part.contributionHigh() == 0;
  }

  @ParameterizedTest
  @ValueSource(strings = {Examples.SEASONING, Examples.BY_GRAM})
  void theLargeStudiesOfferMoreThanAMillionStructures(String name) {
    Desk desk = Examples.whole(name);
    assertThat(desk.compiled().graph().count()).isGreaterThan(BigInteger.valueOf(1_000_000));
    assertThat(desk.compiled().graph().sample(40, 7))
        .allSatisfy(s -> assertThat(desk.compiled().objections(s)).isEmpty());
  }

  @Test
  void aSampleOfTheLargeStudyIsScoredByEveryPlugin() {
    Desk desk = Examples.whole(Examples.SEASONING);
    Study study = desk.study();
    for (var structure : desk.compiled().graph().sample(40, 11)) {
      ScoredStructure scored = desk.score(structure.toString());
      for (String criterion : study.activeWeighting().weights().keySet()) {
        assertThat(scored.figure(criterion)).as("%s of %s", criterion, structure).isNotNaN();
      }
    }
  }
}
