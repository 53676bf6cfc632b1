package plyworth.workbench.command.print;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import plyworth.workbench.analysis.Hindrances;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;

/** Says what keeps every candidate out of a ranking. */
public final class HindrancesText {

  private static final int MOST = 6;

  private HindrancesText() {}

  /** Says what keeps candidates out, where anything does. */
  public static void print(Ranked ranked, PrintWriter out) {
    Hindrances hindrances = Hindrances.of(ranked);
    boolean all = hindrances.looked() == ranked.scored().table().total();
    out.printf(
        Locale.ROOT,
        "No candidate is ranked. What keeps them out%s:%n",
        all ? "" : ", told from " + hindrances.looked() + " of them");
    for (Hindrances.Reason reason : hindrances.reasons().subList(0, shown(hindrances))) {
      String share =
          String.format(Locale.ROOT, "%d of %d: ", reason.candidates(), hindrances.looked());
      out.println(Paragraph.of("  ", share + reason.name() + said(ranked, reason)));
    }
  }

  private static int shown(Hindrances hindrances) {
    return Math.min(MOST, hindrances.reasons().size());
  }

  /** The finding of the example, where it is a finding. */
  private static String said(Ranked ranked, Hindrances.Reason reason) {
    Optional<Sheet.Remark> remark =
        reason.example().remarks().stream()
            .filter(r -> reason.name().equals(r.plugin() + "/" + r.finding().rule()))
            .findFirst();
    return remark.map(r -> ": " + FindingText.sentence(ranked, r)).orElse("");
  }
}
