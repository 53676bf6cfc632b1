package plyworth.workbench.desktop.candidate;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.chart.LayerFill;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.host.Digits;

/**
 * The layers of a structure with their gauges, ready to be drawn.
 *
 * @param bands layers, outside first
 */
public record LayerStack(List<Band> bands) {

  private static final double HAIRLINE = 1;

  /** A layer and its gauge in µm. */
  record Band(Layer layer, Material material, double gauge) {}

  /** The layers of a structure. */
  public static LayerStack of(Structure structure, MaterialLibrary materials) {
    return new LayerStack(
        structure.layers().stream().map(layer -> band(layer, materials)).toList());
  }

  private static Band band(Layer layer, MaterialLibrary materials) {
    Material material = materials.require(layer.material());
    return new Band(layer, material, layer.gaugeUm(material.density()));
  }

  /** Gauge of the whole, µm. */
  public double gaugeUm() {
    return bands.stream().mapToDouble(Band::gauge).sum();
  }

  /** Heights of the middles of the layers. */
  double[] middles(double top, double scale) {
    double[] middles = new double[bands.size()];
    double edge = top;
    for (int i = 0; i < middles.length; i++) {
      double thickness = bands.get(i).gauge() * scale;
      middles[i] = edge + thickness / 2;
      edge += thickness;
    }
    return middles;
  }

  /** Draws the layers, outside up. */
  public void draw(Graphics2D g, double x, double top, double width, double scale, Color line) {
    double edge = top;
    g.setStroke(new BasicStroke(0.5f));
    for (Band band : bands) {
      double thickness = band.gauge() * scale;
      g.setPaint(LayerFill.of(band.material().family()));
      g.fill(new Rectangle2D.Double(x, edge, width, Math.max(HAIRLINE, thickness)));
      edge += thickness;
      g.setColor(line);
      g.draw(new Line2D.Double(x, edge, x + width, edge));
    }
    g.draw(new Rectangle2D.Double(x, top, width, edge - top));
  }

  /** Amount and name of a layer. */
  public String label(int i) {
    return amount(i) + MaterialNames.of(bands.get(i).material());
  }

  /** The label where there is no room for names. */
  public String shortLabel(int i) {
    return amount(i) + bands.get(i).material().id();
  }

  private String amount(int i) {
    Layer layer = bands.get(i).layer();
    return Digits.sensible(layer.amount()) + " " + layer.unit().unit().symbol() + "  ";
  }

  /** What lies at a depth below the outside; null when nothing does. */
  public String tip(double depth, double scale) {
    double edge = 0;
    for (int i = 0; i < bands.size() && depth >= 0; i++) {
      edge += Math.max(HAIRLINE, bands.get(i).gauge() * scale);
      if (depth < edge) {
        String gauge = Digits.sensible(bands.get(i).gauge()) + " µm";
        return label(i) + " (" + bands.get(i).layer() + "), " + gauge;
      }
    }
    return null;
  }
}
