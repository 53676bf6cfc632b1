package plyworth.workbench.command;

import java.io.PrintWriter;
import java.util.List;

/** Prints right-aligned columns, each line followed by a text of any length. */
final class TextColumns {

  private TextColumns() {}

  static void print(
      PrintWriter out, List<String> header, List<List<String>> rows, List<String> texts) {
    int[] widths = header.stream().mapToInt(String::length).toArray();
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    out.println(line(header, widths) + "structure, outside first");
    for (int i = 0; i < rows.size(); i++) {
      out.println(line(rows.get(i), widths) + texts.get(i));
    }
  }

  private static String line(List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      line.append(" ".repeat(widths[i] - cells.get(i).length())).append(cells.get(i)).append("  ");
    }
    return line.toString();
  }
}
