package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import plyworth.shared.brief.Brief;
import plyworth.shared.structure.Structure;

/** Rules on what a plugin answers for one structure. */
final class AnswerRules {

  private AnswerRules() {}

  static void nothingThrows(List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      for (Structure structure : structures) {
        assertThatCode(() -> trial.score(structure))
            .as("scoring " + trial.of(structure))
            .doesNotThrowAnyException();
        assertThatCode(() -> trial.explain(structure))
            .as("explaining " + trial.of(structure))
            .doesNotThrowAnyException();
      }
    }
  }

  static void everyCriterionIsAnswered(List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      Set<String> declared =
          trial.plugin().criteria().stream().map(Criterion::id).collect(Collectors.toSet());
      Set<String> silent = trial.scorer().notApplicable().keySet();
      assertThat(declared).as("declared criteria, " + trial.name()).containsAll(silent);
      for (Structure structure : structures) {
        Assessment assessment = trial.score(structure);
        assertThat(assessment.outcomes().keySet()).as(trial.of(structure)).isEqualTo(declared);
        assertThat(notApplicable(assessment)).as(trial.of(structure)).isEqualTo(silent);
        assertThat(assessment.provided().keySet())
            .as("provided figures, " + trial.of(structure))
            .containsExactlyInAnyOrderElementsOf(trial.plugin().provides());
      }
    }
  }

  private static Set<String> notApplicable(Assessment assessment) {
    return assessment.outcomes().entrySet().stream()
        .filter(e -> e.getValue() instanceof Outcome.NotApplicable)
        .map(Map.Entry::getKey)
        .collect(Collectors.toSet());
  }

  static void figuresAreFiniteAndWithinTheirClasses(
      List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      for (Structure structure : structures) {
        checkFigures(trial.of(structure), trial.plugin(), trial.score(structure));
      }
    }
  }

  private static void checkFigures(String where, ScoringPlugin plugin, Assessment assessment) {
    assertThat(assessment.provided().values())
        .as("provided figures, " + where)
        .noneMatch(f -> Double.isInfinite(f));
    for (Criterion criterion : plugin.criteria()) {
      double figure = assessment.figure(criterion.id());
      assertThat(Double.isInfinite(figure)).as(criterion.id() + ", " + where).isFalse();
      if (!criterion.classes().isEmpty() && !Double.isNaN(figure)) {
        assertThat(figure)
            .as("class number of " + criterion.id() + ", " + where)
            .isBetween(0.0, criterion.classes().size() - 1.0)
            .isEqualTo(Math.rint(figure));
      }
    }
  }

  static void findingsAreSourcedAndBlocksDeclared(List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      Set<String> declared =
          trial.plugin().blockingRules().stream().map(BlockingRule::id).collect(Collectors.toSet());
      for (Structure structure : structures) {
        for (Finding finding : trial.score(structure).findings()) {
          assertThat(finding.source()).as(trial.of(structure)).isNotBlank();
          assertThat(finding.rule()).as(trial.of(structure)).isNotBlank();
          if (finding.level() == Finding.Level.BLOCKS) {
            assertThat(declared).as("blocking rules").contains(finding.rule());
          }
        }
      }
    }
  }

  static void parametersAtTheirBoundsStillScore(List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      for (Parameter parameter : trial.plugin().parameters()) {
        for (double bound : List.of(parameter.lowest(), parameter.highest())) {
          Trial atBound = trial.with(parameter, bound);
          for (Structure structure : structures.subList(0, Math.min(6, structures.size()))) {
            assertThatCode(() -> atBound.score(structure))
                .as(atBound.of(structure))
                .doesNotThrowAnyException();
          }
        }
      }
    }
  }

  /** What is known with the figures of other plugins is known without them. */
  static void scoresWithoutTheFiguresOfOthers(
      ScoringPlugin plugin, List<Brief> briefs, List<Structure> structures) {
    for (Brief brief : briefs) {
      List<Trial> worlds = Trial.of(plugin, List.of(brief));
      for (Structure structure : structures) {
        Assessment with = worlds.get(0).score(structure);
        Assessment without = worlds.get(1).score(structure);
        for (Criterion criterion : plugin.criteria()) {
          if (with.outcomes().get(criterion.id()) instanceof Outcome.Scored) {
            assertThat(without.outcomes().get(criterion.id()))
                .as(criterion.id() + ", " + worlds.get(1).of(structure))
                .isInstanceOf(Outcome.Scored.class);
          }
        }
      }
    }
  }
}
