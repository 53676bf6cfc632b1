package plyworth.workbench.command.ranking;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import plyworth.workbench.analysis.Proposal;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** Prints what to trial and what to fall back on. */
final class ProposalText {

  /** Differences of value that three decimals show. */
  private static final double SHOWN = 0.0005;

  private ProposalText() {}

  /** Nothing where no candidate is ranked. */
  static void print(Ranked ranked, PrintWriter out) {
    Proposal proposal = Proposal.of(ranked);
    if (proposal.trials().isEmpty()) {
      return;
    }
    out.println();
    out.println("Proposal");
    proposal.trials().forEach(pick -> print(ranked, "to trial", pick, out));
    proposal
        .fallback()
        .ifPresentOrElse(
            pick -> print(ranked, "fallback", pick, out),
            () -> out.println("  fallback  none: nothing with today's barrier is free of blocks"));
  }

  private static void print(Ranked ranked, String role, Proposal.Pick pick, PrintWriter out) {
    String value = String.format(Locale.ROOT, "%.3f", pick.valuation().value());
    String line = role + ", value " + value + ": " + reason(ranked, pick);
    out.println(Paragraph.of("  ", line + against(ranked, pick)));
    out.println(Paragraph.structure("    ", pick.structure().toString()));
  }

  private static String reason(Ranked ranked, Proposal.Pick pick) {
    String barrier = barrier(ranked.kinds().barrier(pick.structure()));
    return switch (pick.reason()) {
      case LEADS -> "the best of all, with " + barrier;
      case OTHER_BARRIER ->
          "the best of those with another barrier, "
              + barrier
              + ", so that the two do not fail"
              + " for one reason";
      case OTHER_KIND -> "the best that is printed or sealed in another way; all share one barrier";
      case TODAYS_BARRIER ->
          "the best of those with today's barrier, " + barrier + ", known from the field";
      case TODAY -> "today's structure as it runs";
    };
  }

  private static String barrier(List<String> materials) {
    return materials.isEmpty() ? "no barrier layer" : String.join(" and ", materials);
  }

  /** What it gains most on and loses most on against today's structure. */
  private static String against(Ranked ranked, Proposal.Pick pick) {
    if (pick.reason() == Proposal.Reason.TODAY) {
      return "";
    }
    double[] gains = gains(ranked, pick.valuation());
    int[] order =
        IntStream.range(0, gains.length)
            .boxed()
            .sorted((a, b) -> Double.compare(gains[b], gains[a]))
            .mapToInt(i -> i)
            .toArray();
    int most = order[0];
    int least = order[order.length - 1];
    String gained = gains[most] > SHOWN ? " gains most on " + named(ranked, most, gains) : "";
    String lost = gains[least] < -SHOWN ? " loses most on " + named(ranked, least, gains) : "";
    String between = gained.isEmpty() || lost.isEmpty() ? "" : ",";
    String both = gained + between + lost;
    return both.isEmpty() ? "" : "; against today it" + both;
  }

  private static double[] gains(Ranked ranked, Valuation valuation) {
    List<Valuation.Part> today = ranked.baseline().valuation().parts();
    return IntStream.range(0, today.size())
        .mapToDouble(c -> valuation.parts().get(c).contribution() - today.get(c).contribution())
        .toArray();
  }

  private static String named(Ranked ranked, int criterion, double[] gains) {
    Weighed weighed = ranked.ranking().model().criteria().get(criterion);
    return weighed.criterion().id()
        + String.format(Locale.ROOT, " (%+.3f)", gains[criterion]).replace('-', '−');
  }
}
