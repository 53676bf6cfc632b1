package plyworth.workbench.command.ranking;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.CsvLine;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** Prints a ranking as comma-separated values: every criterion, nine digits, unknown empty. */
final class RankingCsv {

  private RankingCsv() {}

  static void print(Ranked ranked, PrintWriter out) {
    List<String> header = new ArrayList<>(List.of("rank", "value", "value high", "structure"));
    for (Weighed weighed : ranked.ranking().model().criteria()) {
      String unit = weighed.criterion().criterion().unit();
      header.add(weighed.criterion().id() + (unit.isEmpty() ? "" : " [" + unit + "]"));
    }
    out.print(CsvLine.of(header));
    int rank = 1;
    for (RankedCandidate candidate : ranked.best()) {
      Structure structure = ranked.structure(candidate.path());
      out.print(CsvLine.of(cells(Integer.toString(rank++), structure, candidate.valuation())));
    }
    out.print(
        CsvLine.of(cells("today", ranked.baseline().structure(), ranked.baseline().valuation())));
  }

  private static List<String> cells(String rank, Structure structure, Valuation valuation) {
    List<String> cells = new ArrayList<>();
    cells.add(rank);
    cells.add(CsvLine.number(valuation.value()));
    cells.add(CsvLine.number(valuation.valueHigh()));
    cells.add(structure.toString());
    valuation.parts().forEach(part -> cells.add(CsvLine.number(part.low())));
    return cells;
  }
}
