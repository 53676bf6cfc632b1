package plyworth.workbench.desktop.decision;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.function.LongConsumer;
import javax.swing.ToolTipManager;
import plyworth.workbench.chart.StabilityDrawing;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Drawing;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.word.Words;

/**
 * Where the strips of a {@link Stability} are drawn. Up and down mark a row; left and right select
 * who leads below and above, as a click beside the strip does.
 */
public final class StripCanvas extends Drawing {

  private static final long serialVersionUID = 1L;
  private static final int NARROW = 200;

  private transient Stability shown;
  private transient LongConsumer chosen = path -> {};
  private int marked = -1;

  StripCanvas() {
    setName("stability");
    setFocusable(true);
    getAccessibleContext().setAccessibleName(Words.of("stability.name"));
    getAccessibleContext().setAccessibleDescription(Words.of("stability.description"));
    ToolTipManager.sharedInstance().registerComponent(this);
    addMouseListener(new Clicks());
    addFocusListener(new Focus());
    Keys.bind(this, "DOWN", () -> mark(marked + 1));
    Keys.bind(this, "UP", () -> mark(marked - 1));
    Keys.bind(this, "LEFT", () -> choose(false));
    Keys.bind(this, "RIGHT", () -> choose(true));
  }

  /** Told the path number of the candidate that was chosen at the end of a strip. */
  void whenChosen(LongConsumer listener) {
    chosen = listener;
  }

  void show(Stability stability) {
    shown = stability;
    marked = -1;
    revalidate();
    repaint();
  }

  private void mark(int row) {
    if (shown != null && !shown.intervals().isEmpty()) {
      marked = Math.max(0, Math.min(shown.intervals().size() - 1, row));
      repaint();
    }
  }

  private void choose(boolean above) {
    if (marked >= 0) {
      var interval = shown.intervals().get(marked);
      (above ? interval.upper() : interval.lower()).overtaker().ifPresent(chosen);
    }
  }

  /** The drawing as it stands; null while there is nothing to draw. */
  StabilityDrawing drawing() {
    return shown == null
        ? null
        : new StabilityDrawing(
            shown.strips(), Appearance.chartTheme(), isFocusOwner() ? marked : -1);
  }

  @Override
  public Dimension getPreferredSize() {
    StabilityDrawing drawing = drawing();
    return new Dimension(NARROW, drawing == null ? 40 : (int) Math.ceil(drawing.height()));
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    int row = shown == null ? -1 : drawing().row(event.getY());
    return row < 0 ? null : shown.tip(row);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    StabilityDrawing drawing = drawing();
    if (drawing != null) {
      drawing.draw((Graphics2D) graphics, new Rectangle2D.Double(0, 0, getWidth(), getHeight()));
    }
  }

  /** A click left of the pointer selects who leads below, right of it who leads above. */
  private final class Clicks extends MouseAdapter {
    @Override
    public void mousePressed(MouseEvent event) {
      requestFocusInWindow();
      int row = shown == null ? -1 : drawing().row(event.getY());
      if (row >= 0) {
        mark(row);
        choose(event.getX() > shown.intervals().get(row).weight() * getWidth());
      }
    }
  }

  /** The mark shows while the keyboard is here. */
  private final class Focus extends FocusAdapter {
    @Override
    public void focusGained(FocusEvent event) {
      mark(Math.max(0, marked));
    }

    @Override
    public void focusLost(FocusEvent event) {
      repaint();
    }
  }
}
