package plyworth.plugins.printmethod;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.data.Csv;
import plyworth.shared.data.Resources;

/** Most volatile organics in ink as delivered, mass %, after GB 38507-2020. */
public final class InkLimits {

  private static final Map<String, Double> TABLE = read();

  private InkLimits() {}

  /**
   * The limit, mass % of the ink as delivered; NaN when the table has none.
   *
   * @param kind kind of ink
   * @param method {@code flexo} or {@code gravure}
   * @param absorbent whether the stock absorbs
   */
  public static double limit(InkKind kind, String method, boolean absorbent) {
    String stock = absorbent ? "absorbent" : "non-absorbent";
    String line = kind.plain() + " " + method + " ";
    return TABLE.getOrDefault(line + "any", TABLE.getOrDefault(line + stock, Double.NaN));
  }

  private static Map<String, Double> read() {
    Map<String, Double> limits = new LinkedHashMap<>();
    String text = Resources.text(InkLimits.class, "ink-limits.csv");
    for (Csv.Row row :
        Csv.read(text, "ink-limits.csv", List.of("ink", "method", "stock", "limit"))) {
      String line = row.text("ink") + " " + row.text("method") + " " + row.text("stock");
      limits.put(line, row.number("limit"));
    }
    return Map.copyOf(limits);
  }
}
