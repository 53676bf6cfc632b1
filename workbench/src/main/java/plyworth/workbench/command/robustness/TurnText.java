package plyworth.workbench.command.robustness;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.UnitText;
import plyworth.workbench.robustness.turn.Duel;
import plyworth.workbench.robustness.turn.Input;
import plyworth.workbench.robustness.turn.Sweep;
import plyworth.workbench.robustness.turn.Turn;
import plyworth.workbench.robustness.turn.Turns;

/** Prints for people what would have to be true. */
final class TurnText {

  /** A lead as small as this is none: nothing tells the two apart. */
  private static final double LEVEL = 1e-9;

  /** Inputs shown that turn the lead. */
  private static final int MOST_SHOWN = 20;

  /** Inputs shown that cannot turn the lead. */
  private static final int NEAREST_OTHERS = 3;

  private final TurnCommand.Answer answer;
  private final PrintWriter out;

  private TurnText(TurnCommand.Answer answer, PrintWriter out) {
    this.answer = answer;
    this.out = out;
  }

  static void print(TurnCommand.Answer answer, PrintWriter out) {
    new TurnText(answer, out).print();
  }

  private void print() {
    out.println(answer.ranked().study().title());
    out.println();
    out.println("Under \"" + answer.ranked().study().weighting() + "\" A leads, " + leads());
    out.println("  A:");
    out.println(Paragraph.structure("    ", answer.duel().one().toString()));
    out.println("  B:");
    out.println(Paragraph.structure("    ", answer.duel().other().toString()));
    out.println();
    answer.turns().ifPresent(this::one);
    answer.sweep().ifPresent(this::all);
    out.println();
    out.println("Screening estimates; explain shows the formula and the test behind each figure.");
  }

  private String leads() {
    return answer.lead() == Duel.OUT
        ? "and B is not ranked:"
        : "by " + Digits.sensible(answer.lead()) + " of value:";
  }

  private void one(Turns turns) {
    Input input = turns.input();
    out.println(input.name() + ": " + present(input) + range(input) + bounds(input));
    for (Turn turn : turns.turns()) {
      out.println(Paragraph.of("  ", said(turns, turn)));
    }
    if (turns.nearest().isEmpty()) {
      out.println(Paragraph.of("  ", "no figure looked at lets B overtake" + closest(turns)));
    }
    answer.there().ifPresent(there -> leaderThere(turns, there));
    out.println(Paragraph.of("  ", how(turns)));
  }

  private static String present(Input input) {
    return input.kind() == Input.Kind.TABLE
        ? "a table, moved as a whole by a factor"
        : figure(input, input.present()) + " now";
  }

  private static String range(Input input) {
    return Double.isNaN(input.low())
        ? ""
        : ", range " + Digits.sensible(input.low()) + " to " + figure(input, input.high());
  }

  private static String bounds(Input input) {
    boolean bounded = Double.isFinite(input.lowest()) && Double.isFinite(input.highest());
    return bounded
        ? ", bounds " + Digits.sensible(input.lowest()) + " to " + figure(input, input.highest())
        : "";
  }

  private static String said(Turns turns, Turn turn) {
    Input input = turns.input();
    return "at "
        + figure(input, turn.figure())
        + factor(input, turn.figure())
        + (turn.overtakes() ? " B overtakes" : " A leads again")
        + (turn.step() ? ", by a step: a block, a limit or a class changes" : "")
        + credible(input, turn.figure());
  }

  private static String factor(Input input, double figure) {
    double factor = figure / input.present();
    return input.kind() == Input.Kind.TABLE || !Double.isFinite(factor)
        ? ""
        : ", " + Digits.sensible(factor) + " times what it is,";
  }

  private static String credible(Input input, double figure) {
    if (Double.isNaN(input.low())) {
      return "";
    }
    return input.credible(figure) ? "; that is within its range" : "; that is outside its range";
  }

  private static String closest(Turns turns) {
    return turns.closestLead() >= Duel.OUT
        ? ": it is ranked at none"
        : "; at "
            + figure(turns.input(), turns.closest())
            + " it comes closest, "
            + Digits.sensible(turns.closestLead())
            + " behind";
  }

  private void leaderThere(Turns turns, Ranked there) {
    out.println("  just beyond " + figure(turns.input(), turns.nearest().get().figure()) + ":");
    if (there.best().isEmpty()) {
      out.println("    no candidate is ranked");
      return;
    }
    Structure leader = there.structure(there.best().get(0).path());
    List<Structure> two = List.of(answer.duel().one(), answer.duel().other());
    out.println(
        Paragraph.structure(
            "    ",
            "leading among all candidates: "
                + (two.contains(leader) ? "AB".charAt(two.indexOf(leader)) : leader.toString())));
  }

  private static String how(Turns turns) {
    return turns.points() == 0
        ? "In closed form: the lead is a straight line in a weight."
        : "Looked at "
            + turns.points()
            + " figures from "
            + figure(turns.input(), turns.from())
            + " to "
            + figure(turns.input(), turns.to())
            + ", and solved for between two where the lead changes; two changes between the same"
            + " two figures go unseen.";
  }

  private void all(Sweep sweep) {
    int tried = sweep.turning().size() + sweep.others().size();
    if (!sweep.complete()) {
      out.println("Cancelled: only " + tried + " inputs were tried.");
    }
    if (sweep.turning().isEmpty()) {
      out.println("None of " + tried + " inputs, changed alone, lets B overtake.");
    } else {
      out.println(
          sweep.turning().size() + " of " + tried + " inputs, changed alone, let B overtake:");
      sweep.turning().stream().limit(MOST_SHOWN).forEach(this::row);
      if (sweep.turning().size() > MOST_SHOWN) {
        out.println("  and " + (sweep.turning().size() - MOST_SHOWN) + " that take more.");
      }
    }
    List<Turns> near =
        sweep.others().stream()
            .filter(turns -> turns.closestLead() > LEVEL && turns.closestLead() < answer.lead())
            .limit(NEAREST_OTHERS)
            .toList();
    if (!near.isEmpty()) {
      out.println("Those that come closest without:");
      for (Turns turns : near) {
        out.printf(
            Locale.ROOT,
            "  %s, %s now%s%n",
            turns.input().name(),
            figure(turns.input(), turns.input().present()),
            closest(turns));
      }
    }
    out.println(
        Paragraph.of(
            "",
            "Each was looked at in steps from a thousandth to a thousand times what it is, or to"
                + " its bounds, and solved for where the lead first changes; two changes between"
                + " the same two steps go unseen. Name one with --input to look closer."));
  }

  private void row(Turns turns) {
    Turn turn = turns.nearest().orElseThrow();
    Input input = turns.input();
    out.printf(
        Locale.ROOT,
        "  %8s  %s: %s, at the turn %s%s%s%n",
        "× " + Digits.sensible(turn.figure() / input.present()),
        input.name(),
        present(input),
        figure(input, turn.figure()),
        turn.step() ? ", by a step" : "",
        credible(input, turn.figure()));
  }

  private static String figure(Input input, double figure) {
    if (input.kind() == Input.Kind.WEIGHT) {
      return String.format(Locale.ROOT, "%.2f %%", 100 * figure);
    }
    String unit = UnitText.of(input.unit());
    return Digits.sensible(figure) + (unit.isEmpty() ? "" : " " + unit);
  }
}
