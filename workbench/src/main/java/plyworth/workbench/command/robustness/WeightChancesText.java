package plyworth.workbench.command.robustness;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.command.print.TextColumns;
import plyworth.workbench.ranking.RankShare;
import plyworth.workbench.robustness.WeightAcceptability;

/** Prints how often candidates come first while weights alone are uncertain. */
final class WeightChancesText {

  private WeightChancesText() {}

  static void print(Ranked ranked, WeightAcceptability found, int top, PrintWriter out) {
    out.println();
    out.println(
        Paragraph.of(
            "",
            String.format(
                Locale.ROOT,
                "Weights alone uncertain: %,d draws, seed %d, %s, over all %,d candidates that are"
                    + " ranked; figures at their typical values, the unknown at its worst.",
                WeightAcceptability.DRAWS,
                found.seed(),
                ChancesText.weights(found.doubt()),
                ranked.ranking().counts().ranked())));
    out.println();
    List<List<String>> rows = new ArrayList<>();
    List<String> structures = new ArrayList<>();
    for (RankShare share : listed(found, top)) {
      rows.add(
          List.of(
              ChancesText.share(share.first()),
              "±" + ChancesText.share(found.error(share.first())),
              ChancesText.share(share.among())));
      structures.add(ranked.structure(share.path()).toString());
    }
    TextColumns.print(out, List.of("first", "error", "first ten"), rows, structures);
    out.println(
        Paragraph.of(
            "",
            String.format(
                Locale.ROOT,
                "Among the first ten under some of these weights: %,d candidates, and first: %,d of"
                    + " them. No other ever is.",
                found.shares().size(),
                found.shares().stream().filter(share -> share.first() > 0).count())));
  }

  /** Those that are listed: the most often first, and none that never is. */
  static List<RankShare> listed(WeightAcceptability found, int top) {
    return found.shares().stream().filter(share -> share.first() > 0).limit(top).toList();
  }
}
