package plyworth.workbench.command.print;

import java.util.List;
import java.util.Locale;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;
import plyworth.workbench.host.UnitText;
import plyworth.workbench.ranking.Weighed;

/** How criteria and their figures are written for people. */
public final class CriterionText {

  private CriterionText() {}

  /** Full id, title, unit and conditions. */
  public static String named(Ranked ranked, int index) {
    BoundCriterion bound = ranked.ranking().model().criteria().get(index).criterion();
    Criterion criterion = bound.criterion();
    StringBuilder text = new StringBuilder(bound.id()).append(": ");
    text.append(Sentences.of(plugin(ranked, bound), criterion.title(), Locale.ENGLISH));
    String unit = UnitText.of(criterion.unit());
    if (!unit.isEmpty()) {
      text.append(", ").append(unit);
    }
    if (!criterion.conditions().isEmpty()) {
      text.append(" (").append(criterion.conditions()).append(')');
    }
    return text.toString();
  }

  /** What a criterion is called where there is little room. */
  public static String shortName(Weighed weighed) {
    return weighed.criterion().criterion().id();
  }

  /** A figure with three digits, or the name of its class. */
  public static String figure(Ranked ranked, Weighed weighed, double figure) {
    List<Text> classes = weighed.criterion().criterion().classes();
    if (classes.isEmpty() || Double.isNaN(figure)) {
      return Digits.sensible(figure);
    }
    ScoringPlugin plugin = plugin(ranked, weighed.criterion());
    return Sentences.of(plugin, classes.get((int) figure), Locale.ENGLISH);
  }

  /** Why a criterion does not apply to the brief. */
  public static String whyNot(Ranked ranked, Weighed weighed) {
    return weighed
        .criterion()
        .notApplicable()
        .map(why -> Sentences.of(plugin(ranked, weighed.criterion()), why, Locale.ENGLISH))
        .orElse("");
  }

  /** The plugin that a criterion belongs to. */
  public static ScoringPlugin plugin(Ranked ranked, BoundCriterion criterion) {
    return ranked.scored().compiled().prepared().bound().plugin(criterion);
  }
}
