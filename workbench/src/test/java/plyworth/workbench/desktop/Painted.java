package plyworth.workbench.desktop;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import javax.swing.JComponent;

/** Lays a panel out and paints it without a window. */
public final class Painted {

  private static final int SCALE = 2;

  private Painted() {}

  /** Lays a panel out at a size; texts that break need it twice. */
  public static void layOut(JComponent panel, int width, int height) {
    panel.setSize(width, height);
    panel.addNotify();
    for (int i = 0; i < 3; i++) {
      layOutAll(panel);
    }
  }

  private static void layOutAll(Component part) {
    part.doLayout();
    if (part instanceof Container container) {
      for (Component child : container.getComponents()) {
        layOutAll(child);
      }
    }
  }

  public static BufferedImage picture(JComponent panel) {
    BufferedImage image =
        new BufferedImage(
            panel.getWidth() * SCALE, panel.getHeight() * SCALE, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(SCALE, SCALE);
    panel.print(g);
    g.dispose();
    return image;
  }
}
