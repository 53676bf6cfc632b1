package plyworth.workbench.command.print;

import java.util.Locale;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.Sentences;

/** How findings are written for people. */
public final class FindingText {

  private FindingText() {}

  /** Level, remark, rule and source. */
  public static String of(Ranked ranked, Sheet.Remark remark) {
    return remark.finding().level().name().toLowerCase(Locale.ROOT)
        + ": "
        + sentence(ranked, remark)
        + (" [" + remark.plugin() + "/" + remark.finding().rule())
        + ("; " + remark.finding().source() + "]");
  }

  /** The remark alone. */
  public static String sentence(Ranked ranked, Sheet.Remark remark) {
    PluginCatalog catalog = ranked.scored().compiled().prepared().catalog();
    ScoringPlugin plugin = catalog.find(remark.plugin()).orElseThrow().plugin();
    return Sentences.of(plugin, remark.finding().text(), Locale.ENGLISH);
  }
}
