package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plyworth.shared.structure.Structure;

/** Rules on sentences. */
final class TextRules {

  private TextRules() {}

  static void everyTextMakesASentence(
      ScoringPlugin plugin, List<Trial> trials, List<Structure> structures) {
    Sentences sentences = new Sentences(plugin);
    check(sentences, "declared", Sentences.declared(plugin));
    for (Trial trial : trials) {
      check(sentences, trial.name(), List.copyOf(trial.scorer().notApplicable().values()));
      for (Structure structure : structures) {
        check(sentences, trial.of(structure), Sentences.of(trial.score(structure)));
        check(sentences, trial.of(structure), Sentences.of(trial.explain(structure)));
      }
    }
  }

  private static void check(Sentences sentences, String where, List<Text> texts) {
    Set<String> problems =
        texts.stream()
            .map(sentences::problem)
            .filter(p -> !p.isEmpty())
            .collect(Collectors.toSet());
    assertThat(problems).as(where).isEmpty();
  }

  static void everyExplanationHasABasis(List<Trial> trials, List<Structure> structures) {
    for (Trial trial : trials) {
      Sentences sentences = new Sentences(trial.plugin());
      int applicable = trial.plugin().criteria().size() - trial.scorer().notApplicable().size();
      for (Structure structure : applicable > 0 ? structures : List.<Structure>of()) {
        assertThat(trial.explain(structure).sections())
            .as("sections with a basis: " + trial.of(structure))
            .anyMatch(s -> sentences.says(s.basis()));
      }
    }
  }
}
