package plyworth.workbench.desktop;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.stream.Stream;
import plyworth.workbench.chart.LayerFill;

/** The picture of the window: print, paper, foil and sealant as four bands. */
final class Emblem {

  private static final List<String> FAMILIES =
      List.of("ink", "paper", "aluminium-foil", "polyethylene");
  private static final double[] EDGES = {0, 0.12, 0.58, 0.72, 1};

  private Emblem() {}

  static List<Image> images() {
    return Stream.of(16, 32, 64).map(Emblem::image).toList();
  }

  private static Image image(int size) {
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    for (int i = 0; i < FAMILIES.size(); i++) {
      int top = (int) Math.round(EDGES[i] * size);
      g.setPaint(LayerFill.of(FAMILIES.get(i)));
      g.fillRect(0, top, size, (int) Math.round(EDGES[i + 1] * size) - top);
    }
    g.dispose();
    return image;
  }
}
