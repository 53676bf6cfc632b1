package plyworth.workbench.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
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
    line(out, header);
    int rank = 1;
    for (RankedCandidate candidate : ranked.best()) {
      Structure structure = ranked.structure(candidate.path());
      line(out, cells(Integer.toString(rank++), structure, candidate.valuation()));
    }
    line(out, cells("today", ranked.baseline().structure(), ranked.baseline().valuation()));
  }

  private static List<String> cells(String rank, Structure structure, Valuation valuation) {
    List<String> cells = new ArrayList<>();
    cells.add(rank);
    cells.add(number(valuation.value()));
    cells.add(number(valuation.valueHigh()));
    cells.add(structure.toString());
    valuation.parts().forEach(part -> cells.add(number(part.low())));
    return cells;
  }

  private static String number(double figure) {
    return Double.isNaN(figure) ? "" : JsonPrint.text(Json.of(Digits.exported(figure))).strip();
  }

  private static void line(PrintWriter out, List<String> cells) {
    out.print(String.join(",", cells.stream().map(RankingCsv::quoted).toList()) + "\n");
  }

  private static String quoted(String cell) {
    return cell.matches("[^\",\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
