package plyworth.workbench.desktop.decision;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseEvent;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import plyworth.shared.material.MaterialLibrary;
import plyworth.workbench.desktop.candidate.LayerStack;
import plyworth.workbench.desktop.part.Drawing;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/** Structures drawn side by side to one scale, outside up, each with its name above. */
public final class SectionRow extends Drawing {

  private static final long serialVersionUID = 1L;

  private transient Comparison shown;
  private transient List<LayerStack> stacks = List.of();

  SectionRow() {
    setName("compare-sections");
    setFocusable(true);
    getAccessibleContext().setAccessibleName(Words.of("compare.sections"));
    ToolTipManager.sharedInstance().registerComponent(this);
  }

  void show(Comparison comparison) {
    shown = comparison;
    MaterialLibrary materials = comparison.ranked().study().materialsAtHand();
    stacks =
        comparison.columns().stream()
            .map(column -> LayerStack.of(column.sheet().structure(), materials))
            .toList();
    getAccessibleContext()
        .setAccessibleDescription(
            comparison.columns().stream()
                .map(column -> column.name() + ": " + column.sheet().structure())
                .collect(Collectors.joining("; ")));
    revalidate();
    repaint();
  }

  private static Font font() {
    return UIManager.getFont("Label.font");
  }

  private int line() {
    return getFontMetrics(font()).getHeight();
  }

  private double top() {
    return 2.0 * line() + 4;
  }

  /** Lines that name the layers below. */
  private int linesBelow() {
    return stacks.stream().mapToInt(stack -> stack.bands().size()).max().orElse(0);
  }

  private double room() {
    return getHeight() - top() - line() - 8 - (double) linesBelow() * line();
  }

  private double scale() {
    return room() / stacks.stream().mapToDouble(LayerStack::gaugeUm).max().orElse(1);
  }

  private double width() {
    return getWidth() / (double) Math.max(1, stacks.size());
  }

  @Override
  public Dimension getPreferredSize() {
    return new Dimension(400, (linesBelow() + 3) * line() + UIScale.scale(160));
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    int column = (int) (event.getX() / width());
    return column >= stacks.size() ? null : stacks.get(column).tip(event.getY() - top(), scale());
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    for (int i = 0; i < stacks.size(); i++) {
      column(g, i);
    }
    g.dispose();
  }

  private void column(Graphics2D g, int index) {
    LayerStack stack = stacks.get(index);
    Comparison.Column column = shown.columns().get(index);
    int x = (int) (index * width());
    int room = (int) width() - UIScale.scale(16);
    g.setFont(font().deriveFont(Font.BOLD));
    FontMetrics metrics = g.getFontMetrics();
    g.setColor(UIManager.getColor("Label.foreground"));
    write(g, column.name(), column.name(), new Point2D.Double(x, metrics.getAscent()), room);
    g.setFont(font());
    String value =
        Words.of(
            "candidate.value",
            String.format(java.util.Locale.ROOT, "%.3f", column.sheet().valuation().value()));
    write(g, value, value, new Point2D.Double(x, line() + metrics.getAscent()), room);
    stack.draw(g, x, top(), UIScale.scale(84), scale(), UIManager.getColor("Label.foreground"));
    double bottom = top() + stack.gaugeUm() * scale();
    g.setColor(UIManager.getColor("Label.foreground"));
    g.drawString(
        Digits.sensible(stack.gaugeUm()) + " µm", x, (float) (bottom + metrics.getAscent() + 2));
    double below = getHeight() - (double) linesBelow() * line() + metrics.getAscent();
    for (int l = 0; l < stack.bands().size(); l++) {
      Point2D at = new Point2D.Double(x, below + (double) l * line());
      write(g, stack.label(l), stack.shortLabel(l), at, room);
    }
  }
}
