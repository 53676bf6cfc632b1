package plyworth.workbench.desktop.decision;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import plyworth.shared.data.Choice;
import plyworth.shared.scoring.Finding;
import plyworth.shared.study.Remark;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.candidate.FindingsPanel;
import plyworth.workbench.desktop.session.CandidateName;
import plyworth.workbench.desktop.word.CalibrationWords;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.ranking.Weighed;
import plyworth.workbench.robustness.Acceptability;
import plyworth.workbench.robustness.Chance;
import plyworth.workbench.robustness.Stakeholders;
import plyworth.workbench.robustness.WeightInterval;

/** A {@link Review} on one page: what is asked, what is recommended, what it takes and how sure. */
final class ReviewPage {

  private static final double SAME = 0.0005;

  private final Review review;
  private final Optional<Acceptability> drawn;
  private final StringBuilder html = new StringBuilder();

  private ReviewPage(Review review, Optional<Acceptability> drawn) {
    this.review = review;
    this.drawn = drawn;
  }

  /**
   * The page, without its head.
   *
   * @param drawn how often candidates come first; empty while nobody drew
   */
  static String of(Review review, Optional<Acceptability> drawn) {
    ReviewPage page = new ReviewPage(review, drawn);
    page.question();
    page.structures();
    page.gains();
    page.findings();
    page.sure();
    page.stakeholders();
    page.remarks();
    page.line(Words.of("caution"));
    return page.html.toString();
  }

  private Ranked ranked() {
    return review.ranked();
  }

  private Sheet own() {
    return review.recommended().sheet();
  }

  private void head(String key) {
    html.append("<h3 style='margin-top:14; margin-bottom:2'>")
        .append(Html.escaped(Words.of(key)))
        .append("</h3>");
  }

  private void line(String text) {
    html.append("<p style='margin-top:4'>").append(Html.escaped(text)).append("</p>");
  }

  private void question() {
    html.append("<h2 style='margin-bottom:2'>")
        .append(Html.escaped(ranked().study().title()))
        .append("</h2>");
    line(ranked().study().question());
  }

  private void structures() {
    head(review.decided() ? "review.decision" : "review.recommendation");
    structure(review.recommended());
    String reasons = ranked().study().decision().reasons();
    if (!reasons.isEmpty()) {
      line(reasons);
    }
    head("review.runner-up");
    review.runnerUp().ifPresentOrElse(this::structure, () -> line(Words.of("review.no-runner-up")));
    head("review.today");
    structure(new Comparison.Column(Words.of("compare.today"), ranked().baseline()));
  }

  private void structure(Comparison.Column column) {
    Sheet sheet = column.sheet();
    html.append("<p style='margin-top:4'><b>")
        .append(Html.escaped(Labels.brief(sheet.structure())))
        .append("</b><br>");
    html.append(
        Html.escaped(
            Words.of(
                "review.standing",
                column.name(),
                value(sheet.valuation().value()),
                Words.of("group." + Choice.plain(sheet.group())),
                ranked().study().weighting())));
    html.append("</p>");
  }

  private static String value(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }

  private void gains() {
    if (own().structure().equals(ranked().study().baseline())) {
      line(Words.of("review.stays"));
      return;
    }
    head("review.gained");
    table(review.gains().stream().filter(g -> g.value() > SAME).toList());
    head("review.lost");
    table(review.gains().stream().filter(g -> g.value() < -SAME).toList());
  }

  private void table(List<Review.Gain> gains) {
    if (gains.isEmpty()) {
      line(Words.of("review.nothing"));
      return;
    }
    html.append("<table cellpadding='3'><tr>");
    for (String key : List.of("criterion", "figures", "value")) {
      html.append("<th align='left'>").append(Html.escaped(Words.of("review.column." + key)));
      html.append("</th>");
    }
    html.append("</tr>");
    for (Review.Gain gain : gains) {
      Weighed weighed = ranked().ranking().model().criteria().get(gain.criterion());
      String sign = gain.value() > 0 ? "+" : "−";
      html.append("<tr><td>")
          .append(Html.escaped(CriterionWords.title(ranked(), weighed.criterion())))
          .append("</td><td>")
          .append(Html.escaped(figures(weighed, gain.criterion())))
          .append("</td><td align='right'>")
          .append(sign)
          .append(value(Math.abs(gain.value())))
          .append("</td></tr>");
    }
    html.append("</table>");
  }

  private String figures(Weighed weighed, int place) {
    String before =
        CriterionWords.figure(
            ranked(), weighed.criterion(), ranked().baseline().outcomes().get(place).orUnknown());
    String after =
        CriterionWords.figure(
            ranked(), weighed.criterion(), own().outcomes().get(place).orUnknown());
    String unit = CriterionWords.unit(weighed.criterion());
    return before + " → " + after + (unit.isEmpty() ? "" : " " + unit);
  }

  /** What blocks or warns; what informs stands with the candidate. */
  private void findings() {
    List<Sheet.Remark> grave =
        own().remarks().stream()
            .filter(remark -> remark.finding().level() != Finding.Level.INFORMS)
            .toList();
    head("review.findings");
    if (grave.isEmpty()) {
      line(Words.of("review.no-findings"));
    }
    grave.forEach(remark -> html.append(FindingsPanel.one(ranked(), remark)));
  }

  private void remarks() {
    if (!ranked().study().remarks().isEmpty()) {
      head("review.remarks");
      for (Remark remark : ranked().study().remarks()) {
        line(Labels.brief(remark.structure()));
        html.append(FindingsPanel.said(remark));
      }
    }
  }

  private void sure() {
    head("review.sure");
    line(CalibrationWords.said(ranked(), review.today()));
    nearest().ifPresentOrElse(this::line, () -> line(Words.of("review.weights.none")));
    drawn.ifPresentOrElse(this::chance, () -> line(Words.of("review.not-drawn")));
    long unknown =
        IntStream.range(0, own().outcomes().size())
            .filter(c -> ranked().ranking().model().criteria().get(c).counts())
            .filter(c -> !own().valuation().parts().get(c).known())
            .count();
    if (unknown > 0) {
      line(Words.of("review.unknown", unknown));
    }
  }

  /** The smallest move of one weight that gives the lead to another. */
  private Optional<String> nearest() {
    WeightInterval nearest = null;
    boolean above = false;
    double smallest = Double.POSITIVE_INFINITY;
    for (WeightInterval interval : review.stability().intervals()) {
      double fall = interval.weight() - interval.lower().weight();
      double rise = interval.upper().weight() - interval.weight();
      if (interval.lower().overtaker().isPresent() && fall < smallest) {
        nearest = interval;
        above = false;
        smallest = fall;
      }
      if (interval.upper().overtaker().isPresent() && rise < smallest) {
        nearest = interval;
        above = true;
        smallest = rise;
      }
    }
    if (nearest == null) {
      return Optional.empty();
    }
    WeightInterval.End end = above ? nearest.upper() : nearest.lower();
    long path = end.overtaker().orElseThrow();
    return Optional.of(
        Words.of(
            "review.weights",
            CriterionWords.title(
                ranked(),
                ranked().ranking().model().criteria().get(nearest.criterion()).criterion()),
            CandidateName.percent(nearest.weight(), 1),
            CandidateName.percent(end.weight(), 1),
            review.stability().name(path) + " (" + Labels.brief(ranked().structure(path)) + ")"));
  }

  private void chance(Acceptability acceptability) {
    Optional<Chance> found =
        acceptability.chances().stream()
            .filter(c -> ranked().structure(c.path()).equals(own().structure()))
            .findFirst();
    line(
        found
            .map(
                chance ->
                    Words.of(
                        "review.chance",
                        CandidateName.percent(chance.first(), 0),
                        CandidateName.percent(chance.firstError(), 1),
                        CandidateName.percent(chance.amongThree(), 0),
                        acceptability.draws()))
            .orElseGet(() -> Words.of("review.not-among", acceptability.chances().size())));
  }

  private void stakeholders() {
    Stakeholders stakeholders = review.stability().stakeholders();
    if (stakeholders.weightings().size() < 2) {
      return;
    }
    head("review.stakeholders");
    stakeholders.standings().stream()
        .filter(s -> ranked().structure(s.path()).equals(own().structure()))
        .findFirst()
        .ifPresentOrElse(
            standing -> {
              for (int s = 0; s < stakeholders.weightings().size(); s++) {
                line(
                    Words.of(
                        "review.stakeholder",
                        stakeholders.weightings().get(s),
                        standing.ranks().get(s).isPresent()
                            ? standing.ranks().get(s).getAsLong()
                            : "–",
                        value(standing.values().get(s))));
              }
            },
            () -> line(Words.of("review.not-listed", stakeholders.depth())));
    line(StakeholderRows.note(review.stability()));
  }
}
