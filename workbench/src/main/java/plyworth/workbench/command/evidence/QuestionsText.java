package plyworth.workbench.command.evidence;

import java.io.PrintWriter;
import java.util.Locale;
import plyworth.shared.data.Choice;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.UnitText;
import plyworth.workbench.robustness.turn.Duel;
import plyworth.workbench.robustness.turn.OpenQuestions;

/** Prints for people what is worth measuring. */
final class QuestionsText {

  private QuestionsText() {}

  static void print(QuestionsCommand.Answer answer, PrintWriter out) {
    OpenQuestions open = answer.questions();
    out.println(answer.ranked().study().title());
    out.println();
    out.println("Under \"" + answer.ranked().study().weighting() + "\" leads:");
    out.println(Paragraph.structure("  ", open.leader().toString()));
    for (int i = 0; i < open.rivals().size(); i++) {
      out.println("Rival " + (i + 1) + ":");
      out.println(Paragraph.structure("  ", open.rivals().get(i).toString()));
    }
    out.println();
    if (!open.unknown().isEmpty()) {
      out.println("Not known at all, and counted at their worst:");
      open.unknown().forEach(u -> out.println("  " + u.material() + "/" + u.property()));
      out.println();
    }
    questions(answer, out);
    out.println();
    out.println(
        Paragraph.of(
            "",
            "Each figure is moved alone from the low to the high end of its range; the ends are"
                + " looked at, nothing between. With --format csv the list goes to a laboratory, and"
                + " comes back with results --with FILE."));
    out.println();
    out.println("Screening estimates; explain shows the formula and the test behind each figure.");
  }

  private static void questions(QuestionsCommand.Answer answer, PrintWriter out) {
    OpenQuestions open = answer.questions();
    long turning = open.questions().stream().filter(OpenQuestions.Question::turns).count();
    if (!open.complete()) {
      out.println("Cancelled: not all figures were tried.");
    }
    if (open.rivals().isEmpty()) {
      out.println("No candidate of another kind is ranked, so nothing can overtake the leader.");
    } else if (open.questions().isEmpty()) {
      out.println("No figure within its range takes anything from the lead.");
    } else {
      out.println(
          turning == 0
              ? "No figure alone lets a rival overtake. Those that take most of the lead:"
              : turning + " of these figures alone let a rival overtake:");
      open.questions().stream().limit(answer.top()).forEach(q -> question(open, q, out));
    }
  }

  private static void question(
      OpenQuestions open, OpenQuestions.Question question, PrintWriter out) {
    Sourced origin = question.origin();
    Range range = origin.range();
    String unit = UnitText.of(question.property().unit());
    out.printf(
        Locale.ROOT,
        "  %s/%s: %s (%s to %s)%s%s%n",
        question.material(),
        question.property().id(),
        Digits.sensible(range.typical()),
        Digits.sensible(range.low()),
        Digits.sensible(range.high()),
        unit.isEmpty() ? "" : " " + unit,
        question.property().points().size() > 1 ? ", first of a table" : "");
    out.println("    " + effect(open, question));
    out.println(
        Paragraph.of(
            "    ", "known from: " + Choice.plain(origin.kind()) + ", " + origin.source()));
  }

  private static String effect(OpenQuestions open, OpenQuestions.Question question) {
    int rival = 1 + open.rivals().indexOf(question.rival());
    if (question.least() <= -Duel.OUT) {
      return "the leader drops out of the ranking, rival " + rival + " does not";
    }
    return String.format(
        Locale.ROOT,
        question.turns()
            ? "rival %d overtakes: the lead of %s becomes %s"
            : "the lead over rival %d shrinks from %s to %s",
        rival,
        Digits.sensible(question.lead()),
        Digits.sensible(question.least()));
  }
}
