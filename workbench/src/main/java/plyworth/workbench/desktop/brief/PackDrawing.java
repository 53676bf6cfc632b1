package plyworth.workbench.desktop.brief;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.UIManager;
import plyworth.shared.brief.Pack;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/** A pack as it lies flat, and the web it takes beside it to the same scale, with dimensions. */
final class PackDrawing extends JComponent implements Accessible {

  private static final long serialVersionUID = 1L;
  private static final Dimension SIZE = new Dimension(640, 330);
  private static final int LEFT = 16;
  private static final int TOP = 34;
  private static final int FOOT = 90;
  private static final int BESIDE = 150;
  private static final int COLUMN = 62;
  private static final int ROW = 26;
  private static final int HATCH = 5;
  private static final float[] DASHES = {6, 4};

  private transient Optional<Pack> shown = Optional.empty();

  PackDrawing() {
    setName("pack-drawing");
    setPreferredSize(UIScale.scale(SIZE));
  }

  /** Draws a pack; says so when there is none that can be drawn. */
  void show(Optional<Pack> pack) {
    shown = pack;
    getAccessibleContext().setAccessibleDescription(caption());
    repaint();
  }

  /** What stands below the drawing. */
  String caption() {
    return shown
        .map(
            pack ->
                Words.of(
                    "pack-drawing.figures",
                    Digits.sensible(pack.filmAreaM2() * 1e4),
                    Digits.sensible(pack.faceAreaM2() * 1e4),
                    Digits.sensible(pack.sealedEdgeMm())))
        .orElseGet(() -> Words.of("pack-drawing.wrong"));
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            private static final long serialVersionUID = 1L;

            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.ICON;
            }
          };
      accessibleContext.setAccessibleName(Words.of("pack-drawing.name"));
    }
    return accessibleContext;
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    double larger = UIScale.getUserScaleFactor();
    g.scale(larger, larger);
    g.setFont(getFont(Font.PLAIN));
    g.setColor(text());
    shown.ifPresentOrElse(
        pack -> {
          draw(g, new PackShape(pack));
          String all = caption() + "   " + Words.of("pack-drawing.seal");
          g.drawString(all, LEFT, (float) (getHeight() / larger) - 10);
        },
        () -> g.drawString(caption(), LEFT, TOP));
    g.dispose();
  }

  private static Color text() {
    return UIManager.getColor("Label.foreground");
  }

  private void draw(Graphics2D g, PackShape shape) {
    Rectangle2D flat = shape.outline();
    Rectangle2D web = shape.web();
    double larger = UIScale.getUserScaleFactor();
    double wide = getWidth() / larger - LEFT - 2.0 * BESIDE;
    double high = getHeight() / larger - TOP - FOOT;
    double scale =
        Math.min(
            wide / (flat.getWidth() + web.getWidth()),
            high / Math.max(flat.getHeight(), web.getHeight()));
    view(g, LEFT, scale, shape, true);
    view(g, LEFT + flat.getWidth() * scale + BESIDE, scale, shape, false);
  }

  private void view(Graphics2D g, double x, double scale, PackShape shape, boolean flat) {
    Rectangle2D outline = scaled(flat ? shape.outline() : shape.web(), x, scale);
    g.setFont(getFont(Font.BOLD));
    g.drawString(Words.of(flat ? "pack-drawing.front" : "pack-drawing.web"), (float) x, TOP - 14f);
    g.setFont(getFont(Font.PLAIN));
    g.setColor(UIManager.getColor("TextField.background"));
    g.fill(outline);
    g.setColor(text());
    if (flat) {
      shape.seals().forEach(seal -> hatch(g, scaled(seal, x, scale)));
    } else {
      folds(g, shape, outline, scale);
    }
    g.setStroke(new BasicStroke(1.6f));
    g.draw(outline);
    dimensions(g, shape, outline, scale, flat);
  }

  /** As large as it is drawn before everything is made larger. */
  private static Font getFont(int style) {
    Font font = UIManager.getFont("Label.font");
    return font.deriveFont(style, font.getSize2D() / UIScale.getUserScaleFactor());
  }

  private static Rectangle2D scaled(Rectangle2D mm, double x, double scale) {
    return new Rectangle2D.Double(
        x + mm.getX() * scale,
        TOP + mm.getY() * scale,
        mm.getWidth() * scale,
        mm.getHeight() * scale);
  }

  private static void hatch(Graphics2D g, Rectangle2D area) {
    Shape before = g.getClip();
    g.clip(area);
    g.setStroke(new BasicStroke(0.8f));
    double reach = area.getHeight();
    for (double x = area.getX() - reach; x < area.getMaxX(); x += HATCH) {
      g.draw(new Line2D.Double(x, area.getMaxY(), x + reach, area.getY()));
    }
    g.setClip(before);
    g.draw(area);
  }

  private static void folds(Graphics2D g, PackShape shape, Rectangle2D outline, double scale) {
    g.setStroke(
        shape.cut()
            ? new BasicStroke(1.6f)
            : new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, DASHES, 0));
    for (double fold : shape.folds()) {
      double x = outline.getX() + fold * scale;
      g.draw(new Line2D.Double(x, outline.getY(), x, outline.getMaxY()));
    }
  }

  private static void dimensions(
      Graphics2D g, PackShape shape, Rectangle2D outline, double scale, boolean flat) {
    Pack pack = shape.pack();
    DimensionLine line = new DimensionLine(g);
    double below = outline.getMaxY() + 8;
    double right = outline.getMaxX() + 10;
    line.across(
        outline.getX(),
        outline.getMaxX(),
        below,
        length(flat ? pack.widthMm() : pack.laneWidthMm()));
    line.down(
        flat ? right + COLUMN : right,
        outline.getY(),
        outline.getMaxY(),
        length(flat ? pack.lengthMm() : pack.repeatMm()));
    if (flat) {
      double seal = pack.sealWidthMm() * scale;
      line.down(right, outline.getY(), outline.getY() + seal, length(pack.sealWidthMm()));
      if (shape.alongMiddle() && pack.overlapMm() > 0) {
        Rectangle2D along = scaled(shape.seals().get(2), outline.getX(), scale);
        line.across(along.getX(), along.getMaxX(), below + ROW, length(pack.overlapMm()));
      }
    }
  }

  private static String length(double mm) {
    return Measure.LENGTH.write(mm);
  }
}
