package plyworth.workbench.command.robustness;

import java.io.PrintWriter;
import java.util.Locale;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.Digits;
import plyworth.workbench.robustness.SecondOpinion;
import plyworth.workbench.robustness.SecondOpinion.Method;
import plyworth.workbench.robustness.SecondOpinion.Opinion;

/** Prints how other methods order the best. */
final class SecondOpinionText {

  private SecondOpinionText() {}

  static void print(Ranked ranked, SecondOpinion second, PrintWriter out) {
    if (second.opinions().isEmpty()) {
      return;
    }
    out.println();
    out.printf(
        Locale.ROOT,
        "Second opinions on the best %d, by the same weights and values:%n",
        second.candidates().size());
    for (Opinion opinion : second.opinions()) {
      out.println(Paragraph.of("  ", line(opinion)));
      if (opinion.leader() > 0) {
        long path = second.candidates().get(opinion.leader()).path();
        out.println(Paragraph.structure("      ", ranked.structure(path).toString()));
      }
    }
    out.println(
        Paragraph.of(
            "  ",
            "Both order a list by what is in it: a candidate that comes or goes can turn two others"
                + " round. The ranking cannot do that; where they disagree, look at the weights."));
  }

  private static String line(Opinion opinion) {
    String leader =
        opinion.leader() == 0
            ? "puts the leader first as well"
            : "puts another first, which the ranking has as number " + (opinion.leader() + 1);
    return name(opinion.method())
        + (" " + leader)
        + ("; agreement (Kendall's tau-b) " + Digits.sensible(opinion.correlation()));
  }

  private static String name(Method method) {
    return switch (method) {
      case TOPSIS -> "Closeness to the ideal (TOPSIS)";
      case PROMETHEE_II -> "Comparison by pairs (PROMETHEE II)";
    };
  }
}
