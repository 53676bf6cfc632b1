package plyworth.workbench.desktop.word;

import java.util.List;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.Html;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;

/** How criteria are written on screen. */
public final class CriterionWords {

  private CriterionWords() {}

  /** What a criterion is called, in the language in force. */
  public static String title(Ranked ranked, BoundCriterion criterion) {
    return sentence(ranked, criterion, criterion.criterion().title());
  }

  /** Conditions and formula, for a tooltip; {@code more} stands below in bold. */
  public static String help(Ranked ranked, BoundCriterion criterion, String more) {
    Criterion declared = criterion.criterion();
    String conditions =
        declared.conditions().isEmpty() ? "" : "<br>" + Html.escaped(conditions(ranked, criterion));
    return "<html><body style='width:320px'><b>"
        + Html.escaped(title(ranked, criterion))
        + "</b>"
        + conditions
        + "<br>"
        + Html.escaped(sentence(ranked, criterion, declared.formula()))
        + (more.isEmpty() ? "" : "<br><b>" + Html.escaped(more) + "</b>")
        + "</body></html>";
  }

  /** Conditions and formula in plain text. */
  public static String plainHelp(Ranked ranked, BoundCriterion criterion) {
    String conditions =
        criterion.criterion().conditions().isEmpty() ? "" : conditions(ranked, criterion) + "\n";
    return conditions + sentence(ranked, criterion, criterion.criterion().formula());
  }

  private static String conditions(Ranked ranked, BoundCriterion criterion) {
    return Sentences.word(
        plugin(ranked, criterion), criterion.criterion().conditions(), Language.inForce().locale());
  }

  /** A sentence of the plugin of a criterion, in the language in force. */
  public static String sentence(Ranked ranked, BoundCriterion criterion, Text text) {
    return Sentences.of(plugin(ranked, criterion), text, Language.inForce().locale());
  }

  /** A figure with sensible digits, or the name of its class; a dash when unknown. */
  public static String figure(Ranked ranked, BoundCriterion criterion, double figure) {
    List<Text> classes = criterion.criterion().classes();
    return classes.isEmpty() || Double.isNaN(figure)
        ? Digits.sensible(figure)
        : sentence(ranked, criterion, classes.get((int) figure));
  }

  /** Why there is no figure; empty when there is one. */
  public static String absence(Ranked ranked, BoundCriterion criterion, Outcome outcome) {
    if (outcome instanceof Outcome.DataMissing data) {
      return Words.of("figures.missing", data.subject(), PropertyNames.of(data.property()));
    }
    return outcome instanceof Outcome.NotApplicable not
        ? Words.of("figures.not-applicable", sentence(ranked, criterion, not.why()))
        : "";
  }

  /** The unit of a criterion as it is shown; empty for a pure number. */
  public static String unit(BoundCriterion criterion) {
    return UnitText.of(criterion.criterion().unit());
  }

  private static ScoringPlugin plugin(Ranked ranked, BoundCriterion criterion) {
    return ranked.scored().compiled().prepared().bound().plugin(criterion);
  }
}
