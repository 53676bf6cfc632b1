package plyworth.workbench.desktop;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.OptionalLong;
import plyworth.shared.data.Choice;
import plyworth.shared.structure.Layer;
import plyworth.workbench.analysis.Hindrance;
import plyworth.workbench.analysis.Inquiry;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.LimitWords;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.engine.graph.LayerEdit;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;
import plyworth.workbench.ranking.Group;

/** The answer to why a structure is not offered or not ranked, as a page. */
final class InquiryPage {

  /** Significant digits of a figure that breaks a limit, rounded to the side that is allowed. */
  private static final int LIMIT_DIGITS = 4;

  private final Ranked ranked;
  private final Inquiry inquiry;
  private final StringBuilder html = new StringBuilder("<html>");

  private InquiryPage(Ranked ranked, Inquiry inquiry) {
    this.ranked = ranked;
    this.inquiry = inquiry;
  }

  /** The page of an answer. */
  static String of(Ranked ranked, Inquiry inquiry) {
    InquiryPage page = new InquiryPage(ranked, inquiry);
    page.offer();
    page.hindrances();
    page.nearest();
    return page.html.append("</html>").toString();
  }

  private void offer() {
    Sheet sheet = inquiry.sheet();
    if (sheet.onOffer()) {
      head(Words.of("inquiry.on-offer", group(sheet)));
      if (sheet.group() == Group.RANKED) {
        line(Words.of("inquiry.ranked", rank(sheet.path().getAsLong()), value(sheet)));
      }
      return;
    }
    head(Words.of("inquiry.not-on-offer"));
    sheet.objections().forEach(objection -> line(Reason.of(objection.reason())));
    head(Words.of("inquiry.admission"));
    inquiry
        .admission()
        .options()
        .forEach(
            added ->
                line(
                    Words.of(
                        "inquiry.offer",
                        ranked.study().positions().get(added.position()).title(),
                        added.option())));
    inquiry
        .admission()
        .rules()
        .forEach(rule -> line(Words.of("inquiry.lift", rule.id(), rule.reason())));
    if (inquiry.hindrances().isEmpty()) {
      line(Words.of("inquiry.then-ranked", value(sheet)));
    }
  }

  private String rank(long path) {
    OptionalLong rank =
        ranked.ranking().isCounted() ? ranked.ranking().rankOf(path) : OptionalLong.empty();
    return rank.isPresent() ? Digits.sensible(rank.getAsLong()) : Digits.sensible(Double.NaN);
  }

  private void hindrances() {
    if (inquiry.hindrances().isEmpty()) {
      return;
    }
    boolean onOffer = inquiry.sheet().onOffer();
    head(Words.of(onOffer ? "inquiry.hindered" : "inquiry.hindered-then"));
    inquiry.hindrances().forEach(hindrance -> line(said(hindrance)));
    if (inquiry.oneLimitSuffices()) {
      line(Words.of("inquiry.one-limit"));
    } else if (inquiry.hindrances().stream().anyMatch(Hindrance.BrokenLimit.class::isInstance)) {
      line(Words.of("inquiry.not-one-limit"));
    }
  }

  private String said(Hindrance hindrance) {
    if (hindrance instanceof Hindrance.Block block) {
      return Sentences.of(
          ranked
              .scored()
              .compiled()
              .prepared()
              .catalog()
              .find(block.remark().plugin())
              .orElseThrow()
              .plugin(),
          block.remark().finding().text(),
          Language.inForce().locale());
    } else if (hindrance instanceof Hindrance.UnknownFigure unknown) {
      return Words.of(
          "inquiry.unknown",
          unknown.missing().subject(),
          unknown.missing().property(),
          LimitWords.of(ranked, unknown.limit()));
    }
    Hindrance.BrokenLimit broken = (Hindrance.BrokenLimit) hindrance;
    return Words.of("inquiry.limit", LimitWords.of(ranked, broken.limit()), figure(broken));
  }

  private String figure(Hindrance.BrokenLimit broken) {
    int index = ranked.ranking().model().indexOf(broken.limit().criterion()).orElseThrow();
    BoundCriterion criterion = ranked.ranking().model().criteria().get(index).criterion();
    if (!criterion.criterion().classes().isEmpty()) {
      return CriterionWords.figure(ranked, criterion, broken.figure());
    }
    String figure =
        BigDecimal.valueOf(broken.relaxed(LIMIT_DIGITS)).stripTrailingZeros().toPlainString();
    return (figure + " " + CriterionWords.unit(criterion)).strip();
  }

  private void nearest() {
    if (inquiry.nearest().isEmpty()) {
      return;
    }
    head(Words.of("inquiry.nearest"));
    inquiry.nearest().forEach(this::neighbour);
    if (inquiry.nearestRanked().isEmpty()) {
      line(Words.of("inquiry.none-ranked", inquiry.looked()));
    } else if (!inquiry.nearest().contains(inquiry.nearestRanked().get())) {
      head(Words.of("inquiry.nearest-ranked"));
      neighbour(inquiry.nearestRanked().get());
    }
  }

  private void neighbour(Inquiry.Neighbour neighbour) {
    Sheet sheet = neighbour.sheet();
    int edits = neighbour.near().edits().size();
    html.append("<p style='margin-top:4'>")
        .append(Html.escaped(Words.of("inquiry.near", edits, group(sheet), value(sheet))));
    for (LayerEdit edit : neighbour.near().edits()) {
      html.append("<br>&nbsp;&nbsp;&nbsp;").append(Html.escaped(said(edit)));
    }
    html.append("</p>");
  }

  private static String said(LayerEdit edit) {
    return Words.of(
        "inquiry.edit." + Choice.plain(edit.kind()),
        edit.before().map(Layer::toString).orElse(""),
        edit.after().map(Layer::toString).orElse(""));
  }

  private static String group(Sheet sheet) {
    return Words.of("group." + Choice.plain(sheet.group()));
  }

  private static String value(Sheet sheet) {
    return String.format(Locale.ROOT, "%.3f", sheet.valuation().value());
  }

  private void head(String text) {
    html.append("<p style='margin-top:8'><b>").append(Html.escaped(text)).append("</b></p>");
  }

  private void line(String text) {
    html.append("<p style='margin-top:4'>").append(Html.escaped(text)).append("</p>");
  }
}
