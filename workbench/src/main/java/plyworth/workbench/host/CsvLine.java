package plyworth.workbench.host;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonPrint;

/** Lines of comma-separated values (RFC 4180); unknown is empty. */
public final class CsvLine {

  private CsvLine() {}

  /** A line with its end. */
  public static String of(List<String> cells) {
    return cells.stream().map(CsvLine::quoted).collect(Collectors.joining(",", "", "\n"));
  }

  /** A figure with nine digits. */
  public static String number(double figure) {
    return Double.isNaN(figure) ? "" : JsonPrint.text(Json.of(Digits.exported(figure))).strip();
  }

  /** A figure with every digit it has. */
  public static String exact(double figure) {
    return Double.isNaN(figure)
        ? ""
        : BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
  }

  private static String quoted(String cell) {
    return cell.matches("[^\",\n\r]*") ? cell : '"' + cell.replace("\"", "\"\"") + '"';
  }
}
