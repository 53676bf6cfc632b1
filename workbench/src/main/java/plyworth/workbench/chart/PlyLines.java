package plyworth.workbench.chart;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The name of a bar and its layers, broken into lines of a width. */
final class PlyLines {

  /** Where lines begin, right of the rank. */
  static final int INDENT = 26;

  private static final String BETWEEN = " / ";
  private static final Pattern BREAK = Pattern.compile("(?<=[- ])(?![/ ])");
  private static final String MORE = "…";

  private record Run(String text, double x, boolean muted) {}

  private final RankingBars.Bar bar;
  private final ChartTheme theme;
  private final FontMetrics metrics;
  private final double width;
  private final List<List<Run>> lines = new ArrayList<>();

  PlyLines(RankingBars.Bar bar, ChartTheme theme, FontMetrics metrics, double width) {
    this.bar = bar;
    this.theme = theme;
    this.metrics = metrics;
    this.width = width;
    breakIntoLines();
  }

  private void breakIntoLines() {
    double x = Math.max(INDENT, metrics.stringWidth(bar.name()) * 1.1 + 10);
    List<Run> line = new ArrayList<>();
    for (int i = 0; i < bar.plies().size(); i++) {
      RankingBars.Ply ply = bar.plies().get(i);
      String text = ply.label() + (i + 1 < bar.plies().size() ? BETWEEN : "");
      for (String piece : BREAK.split(text)) {
        if (x + metrics.stringWidth(piece.strip()) > width && !line.isEmpty()) {
          lines.add(line);
          line = new ArrayList<>();
          x = INDENT;
        }
        line.add(new Run(piece, x, ply.repeated()));
        x += metrics.stringWidth(piece);
      }
    }
    lines.add(line);
  }

  private double lineHeight() {
    return metrics.getFont().getSize2D() + 1.5;
  }

  /** Height of the lines that fit into {@code room}, at least one. */
  double height(double room) {
    double fits = Math.max(1, Math.floor(room / lineHeight()));
    return Math.min(lines.size(), fits) * lineHeight();
  }

  /** Draws the lines that fit into a height; what does not fit is hinted at. */
  void draw(Graphics2D g, double left, double top, double height) {
    int shown = (int) Math.round(height / lineHeight());
    double baseline = top + metrics.getFont().getSize2D();
    Font plain = metrics.getFont();
    g.setFont(plain.deriveFont(Font.BOLD));
    g.setPaint(theme.text());
    g.drawString(bar.name(), (float) left, (float) baseline);
    g.setFont(plain);
    for (int l = 0; l < shown; l++) {
      for (Run run : lines.get(l)) {
        g.setPaint(run.muted() ? theme.muted() : theme.text());
        g.drawString(run.text(), (float) (left + run.x()), (float) baseline);
      }
      baseline += lineHeight();
    }
    if (shown < lines.size()) {
      List<Run> last = lines.get(shown - 1);
      Run end = last.get(last.size() - 1);
      double x = left + end.x() + metrics.stringWidth(end.text());
      g.drawString(MORE, (float) x, (float) (baseline - lineHeight()));
    }
  }
}
