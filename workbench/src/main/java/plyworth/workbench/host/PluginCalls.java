package plyworth.workbench.host;

import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.structure.Structure;

/** Calls into plugins, which may do anything. Each method throws {@link PluginFailure} for it. */
final class PluginCalls {

  private PluginCalls() {}

  static Scorer bind(LoadedPlugin loaded, ScoringContext context) {
    return answered(
        loaded.id(), "scorer", () -> accepted(loaded, () -> loaded.plugin().bind(context)));
  }

  static Scorer bindAgain(LoadedPlugin loaded, ScoringContext context, Scorer before) {
    return answered(
        loaded.id(),
        "scorer",
        () -> accepted(loaded, () -> loaded.plugin().bindAgain(context, before)));
  }

  private static Scorer accepted(LoadedPlugin loaded, Supplier<Scorer> bind) {
    try {
      return bind.get();
    } catch (IllegalArgumentException e) {
      throw new UnscorableBriefException(loaded.id(), e);
    }
  }

  static Assessment score(BoundPlugin plugin, Structure structure, Map<Figure, Double> needed) {
    Assessment assessment =
        answered(plugin.id(), "score", () -> plugin.scorer().score(structure, needed));
    for (Criterion criterion : plugin.plugin().criteria()) {
      Outcome outcome = assessment.outcomes().get(criterion.id());
      if (outcome == null) {
        throw new PluginFailure(plugin.id(), "it gives no outcome for " + criterion.id());
      }
      checkClass(plugin.plugin(), criterion, outcome);
    }
    return assessment;
  }

  /** A figure that stands for a class must be the number of one. */
  private static void checkClass(ScoringPlugin plugin, Criterion criterion, Outcome outcome) {
    List<?> classes = criterion.classes();
    double figure = outcome.orUnknown();
    boolean isClass = figure == Math.rint(figure) && figure >= 0 && figure < classes.size();
    if (!classes.isEmpty() && !Double.isNaN(figure) && !isClass) {
      throw new PluginFailure(
          plugin.card().id(), criterion.id() + " is " + figure + ", which is none of its classes");
    }
  }

  static Explanation explain(BoundPlugin plugin, Structure structure, Map<Figure, Double> needed) {
    return answered(plugin.id(), "explanation", () -> plugin.scorer().explain(structure, needed));
  }

  private static <T> T answered(String id, String what, Supplier<T> call) {
    T answer;
    try {
      answer = call.get();
    } catch (UnscorableBriefException e) {
      throw e;
    } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError thrown) {
      throw new PluginFailure(id, thrown);
    }
    if (answer == null) {
      throw new PluginFailure(id, "it answers with no " + what);
    }
    return answer;
  }
}
