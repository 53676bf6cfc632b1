package plyworth.workbench.command.candidate;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.study.Limit;
import plyworth.workbench.analysis.Hindrance;
import plyworth.workbench.analysis.Inquiry;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.command.print.CriterionText;
import plyworth.workbench.command.print.FindingText;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.engine.Objection;
import plyworth.workbench.engine.graph.AddedOption;
import plyworth.workbench.engine.graph.LayerEdit;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.UnitText;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.Weighed;

/** Prints for people why a structure is not offered or not ranked. */
final class WhyText {

  /** Significant digits of a figure that breaks a limit, rounded to the side that is allowed. */
  private static final int LIMIT_DIGITS = 4;

  private final WhyCommand.Answer answer;
  private final Ranked ranked;
  private final Inquiry inquiry;
  private final Sheet sheet;
  private final PrintWriter out;

  private WhyText(WhyCommand.Answer answer, PrintWriter out) {
    this.answer = answer;
    this.out = out;
    ranked = answer.ranked();
    inquiry = answer.inquiry();
    sheet = inquiry.sheet();
  }

  static void print(WhyCommand.Answer answer, PrintWriter out) {
    new WhyText(answer, out).print();
  }

  private void print() {
    out.println(Paragraph.structure("", sheet.structure().toString()));
    out.println();
    if (sheet.onOffer()) {
      offered();
    } else {
      notOffered();
    }
    if (!inquiry.hindrances().isEmpty()) {
      hindrances();
    }
    nearest();
    out.println();
    out.println("Screening estimates; explain shows the formula and the test behind each figure.");
  }

  private void offered() {
    out.printf(
        "On offer: path %d of %s candidates, %s.%n",
        sheet.path().getAsLong(),
        Digits.sensible(ranked.scored().compiled().paths().count()),
        SheetText.standing(sheet.group()));
    if (sheet.group() == Group.RANKED) {
      String rank =
          answer.rank().isPresent()
              ? "rank " + Digits.sensible(answer.rank().getAsLong())
              : "its rank was not counted";
      out.printf(
          Locale.ROOT,
          "Nothing keeps it out of the ranking: %s, value %.3f under \"%s\"; the leader has %.3f.%n",
          rank,
          sheet.valuation().value(),
          ranked.study().weighting(),
          ranked.best().get(0).value());
    }
  }

  private void notOffered() {
    out.println("Not on offer:");
    for (Objection objection : sheet.objections()) {
      out.println(Paragraph.of("  ", SheetText.said(objection)));
    }
    out.println();
    out.println("The smallest change of the study that offers it:");
    for (AddedOption added : inquiry.admission().options()) {
      String position = ranked.study().positions().get(added.position()).title();
      out.println(Paragraph.of("  ", "offer at \"" + position + "\" also: " + added.option()));
    }
    for (NeighbourRule rule : inquiry.admission().rules()) {
      out.println(
          Paragraph.of(
              "  ",
              "lift the rule " + rule.id() + ": " + rule.reason() + " [" + rule.source() + "]"));
    }
    if (inquiry.hindrances().isEmpty()) {
      out.printf(
          Locale.ROOT,
          "Then it would be ranked, with a value of %.3f under \"%s\".%n",
          sheet.valuation().value(),
          ranked.study().weighting());
    }
  }

  private void hindrances() {
    out.println();
    out.println(
        sheet.onOffer()
            ? "What keeps it out of the ranking:"
            : "On offer, it would still be kept out of the ranking:");
    for (Hindrance hindrance : inquiry.hindrances()) {
      out.println(Paragraph.of("  ", said(hindrance)));
    }
    long limits =
        inquiry.hindrances().stream().filter(Hindrance.BrokenLimit.class::isInstance).count();
    if (inquiry.oneLimitSuffices()) {
      out.println("  That limit alone keeps it out.");
    } else if (limits > 0) {
      out.println("  No limit relaxed alone lets it in; all of the above must go.");
    }
  }

  private String said(Hindrance hindrance) {
    if (hindrance instanceof Hindrance.Block block) {
      return FindingText.of(ranked, block.remark());
    } else if (hindrance instanceof Hindrance.UnknownFigure unknown) {
      return unknown.limit().criterion()
          + " is unknown, and a limit concerns it: "
          + (unknown.name() + because(unknown.limit()));
    }
    Hindrance.BrokenLimit broken = (Hindrance.BrokenLimit) hindrance;
    Limit limit = broken.limit();
    boolean classes = !weighed(limit).criterion().criterion().classes().isEmpty();
    String figure =
        classes
            ? CriterionText.figure(ranked, weighed(limit), broken.figure())
            : plain(broken.relaxed(LIMIT_DIGITS)) + unit(limit);
    return limit.criterion()
        + (" is " + figure)
        + ("; the limit allows "
            + (limit.bound() == Limit.Bound.AT_MOST ? "at most " : "at least "))
        + (CriterionText.figure(ranked, weighed(limit), limit.figure()) + unit(limit))
        + (because(limit) + "; relaxed to " + figure + " it would allow it");
  }

  private static String because(Limit limit) {
    return limit.reason().isEmpty() ? "" : " (" + limit.reason() + ")";
  }

  private static String plain(double figure) {
    return BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
  }

  private String unit(Limit limit) {
    String unit = UnitText.of(weighed(limit).criterion().criterion().unit());
    return unit.isEmpty() ? "" : " " + unit;
  }

  private Weighed weighed(Limit limit) {
    int index = ranked.ranking().model().indexOf(limit.criterion()).orElseThrow();
    return ranked.ranking().model().criteria().get(index);
  }

  private void nearest() {
    List<Inquiry.Neighbour> nearest = inquiry.nearest();
    if (nearest.isEmpty()) {
      return;
    }
    out.println();
    out.println("The nearest candidates on offer:");
    nearest.forEach(this::neighbour);
    if (inquiry.nearestRanked().isEmpty()) {
      out.println("None of the nearest " + inquiry.looked() + " is ranked.");
    } else if (!nearest.contains(inquiry.nearestRanked().get())) {
      out.println("The nearest that is ranked:");
      neighbour(inquiry.nearestRanked().get());
    }
  }

  private void neighbour(Inquiry.Neighbour neighbour) {
    Sheet there = neighbour.sheet();
    out.printf(
        Locale.ROOT,
        "  path %d, %d edit%s away, %s, value %.3f%n",
        neighbour.near().path(),
        neighbour.near().edits().size(),
        neighbour.near().edits().size() == 1 ? "" : "s",
        SheetText.standing(there.group()),
        there.valuation().value());
    for (LayerEdit edit : neighbour.near().edits()) {
      out.println(Paragraph.of("    ", said(edit)));
    }
  }

  private static String said(LayerEdit edit) {
    return switch (edit.kind()) {
      case ADJUST -> edit.before().orElseThrow() + " becomes " + edit.after().orElseThrow();
      case EXCHANGE -> edit.after().orElseThrow() + " in place of " + edit.before().orElseThrow();
      case ADD -> "with " + edit.after().orElseThrow();
      case TAKE_OUT -> "without " + edit.before().orElseThrow();
    };
  }
}
