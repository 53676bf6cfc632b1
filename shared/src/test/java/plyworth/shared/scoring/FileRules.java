package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import plyworth.shared.store.StudyFile;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Decision;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;

/** Rules on what a study file keeps of a plugin. */
final class FileRules {

  private FileRules() {}

  /** Parameters at either bound, weights and value functions are read back as they were. */
  static void settingsAndWeightsSurviveTheStudyFile(ScoringPlugin plugin) {
    assertThatCode(() -> survives(plugin, Parameter::lowest)).doesNotThrowAnyException();
    assertThatCode(() -> survives(plugin, Parameter::highest)).doesNotThrowAnyException();
  }

  private static void survives(ScoringPlugin plugin, ToDoubleFunction<Parameter> setting) {
    Study study = study(plugin, setting);
    Study read = StudyFile.read(StudyFile.write(study), "conformance.study.json");
    assertThat(read.settings()).isEqualTo(study.settings());
    assertThat(read.weightings()).isEqualTo(study.weightings());
    assertThat(read.valueFunctions()).isEqualTo(study.valueFunctions());
  }

  private static Study study(ScoringPlugin plugin, ToDoubleFunction<Parameter> setting) {
    String id = plugin.card().id();
    Map<String, Double> settings = new TreeMap<>();
    plugin.parameters().forEach(p -> settings.put(p.id(), setting.applyAsDouble(p)));
    Map<String, Double> weights = new TreeMap<>();
    Map<String, ValueFunction> functions = new TreeMap<>();
    for (Criterion criterion : plugin.criteria()) {
      weights.put(id + "/" + criterion.id(), criterion.weight());
      functions.put(id + "/" + criterion.id(), criterion.value());
    }
    Structure baseline = SampleStructures.usual().get(0);
    return new Study(
        "Conformance",
        "",
        SampleBriefs.sugarStick(),
        List.of(new Position("All", List.of(new Option(baseline.layers())))),
        List.of(),
        baseline,
        List.of(),
        List.of(new Weighting("General", weights)),
        "General",
        functions,
        List.of(),
        Map.of(id, settings),
        Study.STANDARD_SEED,
        List.of(),
        List.of(),
        Optional.empty(),
        Results.NONE,
        List.of(),
        Decision.OPEN,
        "");
  }
}
