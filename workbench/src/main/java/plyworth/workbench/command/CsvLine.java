package plyworth.workbench.command;

import java.io.PrintWriter;
import java.util.List;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonPrint;
import plyworth.workbench.host.Digits;

/** Lines of comma-separated values (RFC 4180): nine digits, unknown empty. */
final class CsvLine {

  private CsvLine() {}

  static void print(PrintWriter out, List<String> cells) {
    out.print(String.join(",", cells.stream().map(CsvLine::quoted).toList()) + "\n");
  }

  static String number(double figure) {
    return Double.isNaN(figure) ? "" : JsonPrint.text(Json.of(Digits.exported(figure))).strip();
  }

  private static String quoted(String cell) {
    return cell.matches("[^\",\n]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
