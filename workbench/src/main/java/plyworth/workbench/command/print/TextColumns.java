package plyworth.workbench.command.print;

import java.io.PrintWriter;
import java.util.List;

/** Prints right-aligned columns, each line of figures followed by the structure they belong to. */
public final class TextColumns {

  private TextColumns() {}

  /** Prints rows in columns. */
  public static void print(
      PrintWriter out, List<String> header, List<List<String>> rows, List<String> structures) {
    int[] widths = header.stream().mapToInt(String::length).toArray();
    for (List<String> row : rows) {
      for (int i = 0; i < widths.length; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    out.println(line(header, widths));
    String indent = " ".repeat(widths[0] + 2);
    for (int i = 0; i < rows.size(); i++) {
      out.println(line(rows.get(i), widths));
      out.println(Paragraph.structure(indent, structures.get(i)));
    }
  }

  private static String line(List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < widths.length; i++) {
      line.append(" ".repeat(widths[i] - cells.get(i).length())).append(cells.get(i)).append("  ");
    }
    return line.toString().stripTrailing();
  }
}
