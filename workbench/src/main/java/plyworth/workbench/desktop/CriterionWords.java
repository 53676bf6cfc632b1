package plyworth.workbench.desktop;

import java.util.List;
import java.util.Locale;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;

/** How criteria are written on screen. */
final class CriterionWords {

  private CriterionWords() {}

  static String title(Ranked ranked, BoundCriterion criterion) {
    return sentence(ranked, criterion, criterion.criterion().title());
  }

  /** Formula, source and conditions, for a tooltip. */
  static String help(Ranked ranked, BoundCriterion criterion) {
    Criterion declared = criterion.criterion();
    String conditions = declared.conditions().isEmpty() ? "" : "<br>" + declared.conditions();
    return "<html><body style='width:320px'><b>"
        + title(ranked, criterion)
        + "</b>"
        + conditions
        + "<br>"
        + sentence(ranked, criterion, declared.formula())
        + "</body></html>";
  }

  static String sentence(Ranked ranked, BoundCriterion criterion, Text text) {
    return Sentences.of(plugin(ranked, criterion), text, Locale.ENGLISH);
  }

  /** A figure with sensible digits, or the name of its class; a dash when unknown. */
  static String figure(Ranked ranked, BoundCriterion criterion, double figure) {
    List<Text> classes = criterion.criterion().classes();
    return classes.isEmpty() || Double.isNaN(figure)
        ? Digits.sensible(figure)
        : sentence(ranked, criterion, classes.get((int) figure));
  }

  static String unit(BoundCriterion criterion) {
    String unit = criterion.criterion().unit();
    return unit.equals("1")
        ? ""
        : unit.replace("cm3", "cm³")
            .replace("m2", "m²")
            .replace("N.mm", "N·mm")
            .replace("(m².day.bar)", "(m²·day·bar)")
            .replace("(m².day)", "(m²·day)");
  }

  private static ScoringPlugin plugin(Ranked ranked, BoundCriterion criterion) {
    return ranked.scored().compiled().prepared().bound().plugins().get(criterion.plugin()).plugin();
  }
}
