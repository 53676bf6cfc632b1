package plyworth.workbench.desktop;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.UIManager;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.Digits;

/**
 * A structure drawn to scale, outside up. Layers too thin for their label get a leader line; no
 * layer is drawn thinner than a hairline, and none is drawn thicker than it is.
 */
final class CrossSection extends JComponent {

  private static final long serialVersionUID = 1L;
  private static final double HAIRLINE = 1;
  private static final int BODY_WIDTH = 110;
  private static final int GAP = 26;

  private record Band(Layer layer, Material material, double gauge) {}

  private transient List<Band> bands = List.of();

  CrossSection() {
    setName("cross-section");
    setOpaque(false);
    setMinimumSize(new Dimension(240, 120));
    setPreferredSize(new Dimension(360, 220));
    getAccessibleContext().setAccessibleName("Cross-section");
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            private static final long serialVersionUID = 1L;
          };
    }
    return accessibleContext;
  }

  void show(Structure structure, MaterialLibrary materials) {
    List<Band> drawn = new ArrayList<>();
    for (Layer layer : structure.layers()) {
      Material material = materials.require(layer.material());
      drawn.add(new Band(layer, material, layer.gaugeUm(material.density())));
    }
    bands = List.copyOf(drawn);
    getAccessibleContext().setAccessibleDescription(structure.toString());
    setToolTipText(structure.toString());
    repaint();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    if (bands.isEmpty()) {
      return;
    }
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setFont(UIManager.getFont("Label.font"));
    FontMetrics metrics = g.getFontMetrics();
    int lineHeight = metrics.getHeight();
    double top = lineHeight + 4.0;
    double height = getHeight() - 2.0 * top;
    double total = bands.stream().mapToDouble(Band::gauge).sum();
    g.setColor(UIManager.getColor("Label.foreground"));
    g.drawString("outside", 0, metrics.getAscent());
    g.drawString(
        "inside, " + Digits.sensible(total) + " µm in all", 0, getHeight() - metrics.getDescent());
    double[] edges = edges(top, height, total);
    double[] labels = labelLines(edges, lineHeight);
    for (int i = 0; i < bands.size(); i++) {
      drawBand(g, bands.get(i), edges[i], edges[i + 1], labels[i], metrics);
    }
    g.dispose();
  }

  private double[] edges(double top, double height, double total) {
    double[] edges = new double[bands.size() + 1];
    edges[0] = top;
    for (int i = 0; i < bands.size(); i++) {
      edges[i + 1] = edges[i] + bands.get(i).gauge() / total * height;
    }
    return edges;
  }

  /** Middles of the labels: at the middle of their band, pushed apart to one line each. */
  private double[] labelLines(double[] edges, int lineHeight) {
    int n = bands.size();
    double[] middles = new double[n];
    double floor = lineHeight * 1.5;
    for (int i = 0; i < n; i++) {
      middles[i] = Math.max(floor, (edges[i] + edges[i + 1]) / 2);
      floor = middles[i] + lineHeight;
    }
    double ceiling = getHeight() - lineHeight * 1.5;
    for (int i = n - 1; i >= 0; i--) {
      middles[i] = Math.min(middles[i], ceiling);
      ceiling = middles[i] - lineHeight;
    }
    return middles;
  }

  private void drawBand(
      Graphics2D g, Band band, double top, double bottom, double label, FontMetrics metrics) {
    double thickness = Math.max(HAIRLINE, bottom - top);
    g.setPaint(LayerFill.of(band.material().family()));
    g.fill(new Rectangle2D.Double(0, top, BODY_WIDTH, thickness));
    g.setColor(UIManager.getColor("Label.foreground"));
    g.setStroke(new BasicStroke(0.5f));
    g.draw(new Line2D.Double(0, bottom, BODY_WIDTH, bottom));
    double middle = (top + bottom) / 2;
    g.draw(new Line2D.Double(BODY_WIDTH, middle, BODY_WIDTH + GAP - 4.0, label));
    float baseline = (float) (label + (metrics.getAscent() - metrics.getDescent()) / 2.0);
    g.drawString(text(band), BODY_WIDTH + GAP, baseline);
  }

  private static String text(Band band) {
    String amount = Digits.sensible(band.layer().amount());
    return band.material().name() + ", " + amount + " " + band.layer().unit().unit().symbol();
  }
}
