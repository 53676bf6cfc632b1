package plyworth.workbench.command.print;

import java.util.ArrayList;
import java.util.List;

/** Breaks texts into lines that a screen of 160 columns holds. */
public final class Paragraph {

  private static final int WIDTH = 160;

  private Paragraph() {}

  /** A sentence; lines after the first stand two columns further in. */
  public static String of(String indent, String sentence) {
    return broken(indent, indent + "  ", sentence.strip().split(" +"), " ");
  }

  /** A structure in layer notation, broken between layers. */
  public static String structure(String indent, String notation) {
    return broken(indent, indent, notation.split(" / "), " / ");
  }

  private static String broken(String first, String rest, String[] pieces, String between) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first).append(pieces[0]);
    for (int i = 1; i < pieces.length; i++) {
      String more = between + pieces[i];
      if (line.length() + more.length() > WIDTH) {
        lines.add((line + between).stripTrailing());
        line = new StringBuilder(rest).append(pieces[i]);
      } else {
        line.append(more);
      }
    }
    lines.add(line.toString());
    return String.join(System.lineSeparator(), lines);
  }
}
