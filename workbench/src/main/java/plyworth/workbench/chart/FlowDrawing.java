package plyworth.workbench.chart;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jfree.chart.ui.Drawable;

/**
 * Draws {@link FlowColumns}: ribbons between boxes, as thick as the candidates are many. What runs
 * through the selected box is darker and has an outline; a box that no candidate uses is dashed.
 */
public final class FlowDrawing implements Drawable {

  private static final BasicStroke FINE = new BasicStroke(0.8f);
  private static final BasicStroke BROAD = new BasicStroke(2.4f);
  private static final BasicStroke DASHED =
      new BasicStroke(
          0.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10, new float[] {4, 3}, 0);
  private static final float PALE = 0.35f;
  private static final float STRONG = 0.75f;
  private static final double THINNEST = 0.7;
  private static final int HUE = 2;

  /** A box by its column and its place there. */
  public record At(int column, int box) {}

  private final FlowColumns columns;
  private final ChartTheme theme;
  private final Optional<At> selected;

  /** A drawing with one box selected, or none. */
  public FlowDrawing(FlowColumns columns, ChartTheme theme, Optional<At> selected) {
    this.columns = columns;
    this.theme = theme;
    this.selected = selected;
  }

  private FlowPlaces places(double width, double height) {
    return new FlowPlaces(columns, theme.font(), width, height);
  }

  /** The width that no label is cut at. */
  public double width() {
    return places(0, 0).width();
  }

  /** The height at which every box has room for its two lines. */
  public double height() {
    return places(0, 0).height();
  }

  /** The box at a point of a drawing of a size. */
  public Optional<At> boxAt(double x, double y, double width, double height) {
    FlowPlaces places = places(width, height);
    for (int c = 0; c < columns.columns().size(); c++) {
      for (int b = 0; b < columns.boxes(c); b++) {
        if (places.box(c, b).contains(x, y)) {
          return Optional.of(new At(c, b));
        }
      }
    }
    return Optional.empty();
  }

  /** The ribbon at a point of a drawing of a size, the uppermost where several cross. */
  public Optional<FlowColumns.Ribbon> ribbonAt(double x, double y, double width, double height) {
    Optional<FlowColumns.Ribbon> found = Optional.empty();
    for (FlowPlaces.Strip strip : places(width, height).strips()) {
      if (strip.outline(Math.max(2, strip.thick())).contains(x, y)) {
        found = Optional.of(strip.ribbon());
      }
    }
    return found;
  }

  /** Where a box stands in a drawing of a size. */
  public Rectangle2D place(At at, double width, double height) {
    return places(width, height).box(at.column(), at.box());
  }

  @Override
  public void draw(Graphics2D graphics, Rectangle2D area) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setPaint(theme.background());
    g.fill(area);
    g.translate(area.getX(), area.getY());
    FlowPlaces places = places(area.getWidth(), area.getHeight());
    places.strips().forEach(strip -> whole(g, strip));
    places.strips().forEach(strip -> chosen(g, strip));
    for (int c = 0; c < columns.columns().size(); c++) {
      column(g, places, c);
    }
    g.dispose();
  }

  private void whole(Graphics2D g, FlowPlaces.Strip strip) {
    g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, PALE));
    g.setPaint(selected.isPresent() ? theme.muted() : hue());
    g.fill(strip.outline(Math.max(THINNEST, strip.thick())));
    g.setComposite(AlphaComposite.SrcOver);
  }

  private void chosen(Graphics2D g, FlowPlaces.Strip strip) {
    if (selected.isPresent() && strip.ribbon().chosen() > 0) {
      g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, STRONG));
      g.setPaint(hue());
      g.fill(strip.outline(Math.max(THINNEST, strip.chosen())));
      g.setComposite(AlphaComposite.SrcOver);
      g.setPaint(theme.text());
      g.setStroke(FINE);
      g.draw(strip.outline(Math.max(THINNEST, strip.chosen())));
    }
  }

  private Color hue() {
    return theme.legible(PartPaint.hue(HUE));
  }

  private void column(Graphics2D g, FlowPlaces places, int column) {
    FlowColumns.Column shown = columns.columns().get(column);
    g.setFont(theme.bold(0));
    g.setPaint(theme.text());
    if (!shown.boxes().isEmpty()) {
      double left = places.box(column, 0).getX();
      g.drawString(shown.title(), (float) left, g.getFontMetrics().getAscent() + 2f);
    }
    for (int b = 0; b < shown.boxes().size(); b++) {
      box(g, places, new At(column, b), shown.boxes().get(b));
    }
  }

  private void box(Graphics2D g, FlowPlaces places, At at, FlowColumns.Box box) {
    Rectangle2D place = places.box(at.column(), at.box());
    boolean marked = selected.filter(at::equals).isPresent();
    g.setPaint(marked ? theme.selection() : theme.background());
    g.fill(place);
    if (!box.family().isEmpty()) {
      g.setPaint(LayerFill.of(box.family()));
      g.fill(
          new Rectangle2D.Double(place.getX(), place.getY(), FlowPlaces.SWATCH, place.getHeight()));
    }
    g.setPaint(marked ? theme.text() : theme.muted());
    g.setStroke(marked ? BROAD : box.candidates() == 0 ? DASHED : FINE);
    g.draw(place);
    g.setFont(theme.font());
    FontMetrics metrics = g.getFontMetrics();
    float x = (float) (place.getX() + FlowPlaces.SWATCH + FlowPlaces.INSET);
    float y = (float) (place.getCenterY() - 1 - metrics.getDescent());
    g.setPaint(theme.text());
    g.drawString(box.label(), x, y);
    g.setPaint(marked ? theme.text() : theme.muted());
    g.drawString(box.count(), x, (float) (y + places.line()));
  }
}
