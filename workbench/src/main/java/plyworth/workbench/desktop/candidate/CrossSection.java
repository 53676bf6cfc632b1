package plyworth.workbench.desktop.candidate;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseEvent;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.util.Optional;
import javax.swing.ToolTipManager;
import javax.swing.UIManager;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.structure.Structure;
import plyworth.workbench.desktop.part.Drawing;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/**
 * A structure drawn to scale beside today's, outside up. Every layer has its label at the end of a
 * leader line; no layer is drawn thinner than a hairline, and none thicker than it is.
 */
final class CrossSection extends Drawing {

  private static final long serialVersionUID = 1L;

  private final int wide = UIScale.scale(100);
  private final int narrow = UIScale.scale(46);
  private final int gap = UIScale.scale(24);
  private transient Optional<LayerStack> own = Optional.empty();
  private transient Optional<LayerStack> today = Optional.empty();

  CrossSection() {
    setName("cross-section");
    setOpaque(false);
    setMinimumSize(UIScale.scale(new Dimension(240, 120)));
    setPreferredSize(UIScale.scale(new Dimension(360, 220)));
    getAccessibleContext().setAccessibleName(Words.of("section.name"));
    ToolTipManager.sharedInstance().registerComponent(this);
  }

  /** Draws a structure; beside it the baseline, unless it is the same. */
  void show(Structure structure, Structure baseline, MaterialLibrary materials) {
    own = Optional.of(LayerStack.of(structure, materials));
    today =
        structure.equals(baseline)
            ? Optional.empty()
            : Optional.of(LayerStack.of(baseline, materials));
    getAccessibleContext().setAccessibleDescription(structure.toString());
    repaint();
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    Optional<LayerStack> under = today.isPresent() && event.getX() < narrow + gap / 2 ? today : own;
    return under.map(s -> s.tip(event.getY() - top(), scale())).orElse(null);
  }

  private double top() {
    return getFontMetrics(font()).getHeight() + 4.0;
  }

  private static Font font() {
    return UIManager.getFont("Label.font");
  }

  /** Pixels per µm, for both. */
  private double scale() {
    double thickest =
        Math.max(
            own.map(LayerStack::gaugeUm).orElse(0.0), today.map(LayerStack::gaugeUm).orElse(0.0));
    return (getHeight() - 2 * top()) / thickest;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    if (own.isEmpty()) {
      return;
    }
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setFont(font());
    int x = 0;
    if (today.isPresent()) {
      body(g, today.get(), 0, narrow, Words.of("section.today"));
      x = narrow + gap;
    }
    body(g, own.get(), x, wide, Words.of(today.isPresent() ? "section.own" : "section.today"));
    labels(g, own.get(), x + wide);
    g.dispose();
  }

  private void body(Graphics2D g, LayerStack stack, int x, int width, String caption) {
    stack.draw(g, x, top(), width, scale(), UIManager.getColor("Label.foreground"));
    FontMetrics metrics = g.getFontMetrics();
    g.setColor(UIManager.getColor("Label.foreground"));
    g.drawString(caption, x, metrics.getAscent());
    String thickness = Digits.sensible(stack.gaugeUm()) + " µm";
    double bottom = top() + stack.gaugeUm() * scale();
    g.drawString(thickness, x, (float) (bottom + 2 + metrics.getAscent()));
  }

  private void labels(Graphics2D g, LayerStack stack, int x) {
    FontMetrics metrics = g.getFontMetrics();
    double[] middles = stack.middles(top(), scale());
    double[] lines = spread(middles, metrics.getHeight());
    int start = x + gap;
    g.setStroke(new BasicStroke(0.5f));
    g.drawString(Words.of("section.outside"), start, metrics.getAscent());
    for (int i = 0; i < middles.length; i++) {
      g.draw(new Line2D.Double(x, middles[i], start - 4.0, lines[i]));
      double baseline = lines[i] + (metrics.getAscent() - metrics.getDescent()) / 2.0;
      Point2D at = new Point2D.Double(start, baseline);
      write(g, stack.label(i), stack.shortLabel(i), at, getWidth() - start);
    }
    double below = Math.max(top() + stack.gaugeUm() * scale(), lines[lines.length - 1] + 8) + 2;
    g.drawString(Words.of("section.inside"), start, (float) (below + metrics.getAscent()));
  }

  /** Middles of the labels: at the middle of their layer, pushed apart to one line each. */
  private double[] spread(double[] middles, int lineHeight) {
    double[] lines = middles.clone();
    double floor = lineHeight * 1.6;
    for (int i = 0; i < lines.length; i++) {
      lines[i] = Math.max(floor, lines[i]);
      floor = lines[i] + lineHeight;
    }
    double ceiling = getHeight() - lineHeight * 1.6;
    for (int i = lines.length - 1; i >= 0; i--) {
      lines[i] = Math.min(lines[i], ceiling);
      ceiling = lines[i] - lineHeight;
    }
    return lines;
  }
}
