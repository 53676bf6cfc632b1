package plyworth.plugins.printmethod;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plyworth.shared.data.Csv;
import plyworth.shared.data.Resources;

/** Which methods suit which print position. */
final class Positions {

  /**
   * One line of the table.
   *
   * @param verdict whether the method suits the position
   * @param source why
   */
  record Entry(Verdict verdict, String source) {}

  private static final Map<String, Entry> TABLE = read();

  private Positions() {}

  /** The line for a process, or for its kind of ink where the process has none of its own. */
  static Entry of(String position, String processId, InkKind kind) {
    Entry own = TABLE.get(position + " " + processId);
    return own != null ? own : TABLE.get(position + " " + kind.plain());
  }

  private static Map<String, Entry> read() {
    List<String> header = List.of("position", "method", "verdict", "source");
    Map<String, Entry> entries = new LinkedHashMap<>();
    String text = Resources.text(Positions.class, "positions.csv");
    for (Csv.Row row : Csv.read(text, "positions.csv", header)) {
      Verdict verdict = Verdict.valueOf(row.text("verdict").toUpperCase(Locale.ROOT));
      entries.put(
          row.text("position") + " " + row.text("method"), new Entry(verdict, row.text("source")));
    }
    return Map.copyOf(entries);
  }
}
