package plyworth.workbench.desktop.position;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.Scrollable;
import javax.swing.ToolTipManager;
import plyworth.workbench.chart.FlowColumns;
import plyworth.workbench.chart.FlowDrawing;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.word.Words;

/**
 * Where the candidate graph is drawn. Left and right go from position to position, up and down from
 * option to option; Escape selects nothing.
 */
public final class FlowCanvas extends JComponent implements Scrollable {

  private static final long serialVersionUID = 1L;
  private static final int STEP = 30;

  private transient OptionColumns shown;
  private transient FlowColumns columns;
  private transient Optional<FlowDrawing.At> selected = Optional.empty();
  private transient Consumer<Optional<FlowDrawing.At>> chosen = at -> {};

  FlowCanvas() {
    setName("flows");
    setFocusable(true);
    getAccessibleContext().setAccessibleName(Words.of("flows.name"));
    getAccessibleContext().setAccessibleDescription(Words.of("flows.description"));
    ToolTipManager.sharedInstance().registerComponent(this);
    addMouseListener(new Clicks());
    Keys.bind(this, "DOWN", () -> step(0, 1));
    Keys.bind(this, "UP", () -> step(0, -1));
    Keys.bind(this, "LEFT", () -> step(-1, 0));
    Keys.bind(this, "RIGHT", () -> step(1, 0));
    Keys.bind(this, "ESCAPE", () -> select(Optional.empty()));
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

  /** Told which box is selected; nothing where none is any more. */
  void whenChosen(Consumer<Optional<FlowDrawing.At>> listener) {
    chosen = listener;
  }

  void show(OptionColumns now) {
    shown = now;
    columns = now.columns();
    selected = now.selected();
    String said = now.said();
    getAccessibleContext()
        .setAccessibleDescription(said.isEmpty() ? Words.of("flows.description") : said);
    revalidate();
    repaint();
  }

  /** The box that is selected. */
  Optional<FlowDrawing.At> selected() {
    return selected;
  }

  private void step(int column, int box) {
    if (columns == null) {
      return;
    }
    FlowDrawing.At from = selected.orElse(new FlowDrawing.At(-1, 0));
    int last = columns.columns().size() - 1;
    int to = Math.max(0, Math.min(last, selected.isPresent() ? from.column() + column : 0));
    int at = Math.max(0, Math.min(columns.boxes(to) - 1, from.box() + box));
    select(Optional.of(new FlowDrawing.At(to, at)));
  }

  private void select(Optional<FlowDrawing.At> now) {
    if (!now.equals(selected)) {
      selected = now;
      now.ifPresent(this::reveal);
      repaint();
      chosen.accept(now);
    }
  }

  private void reveal(FlowDrawing.At at) {
    Rectangle place = drawing().place(at, getWidth(), getHeight()).getBounds();
    place.grow(STEP, STEP);
    scrollRectToVisible(place);
  }

  /** The drawing as it stands; null while there is nothing to draw. */
  FlowDrawing drawing() {
    return columns == null ? null : new FlowDrawing(columns, Appearance.chartTheme(), selected);
  }

  @Override
  public Dimension getPreferredSize() {
    FlowDrawing drawing = drawing();
    return drawing == null
        ? new Dimension(0, 0)
        : new Dimension((int) Math.ceil(drawing.width()), (int) Math.ceil(drawing.height()));
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    FlowDrawing drawing = drawing();
    if (drawing == null) {
      return null;
    }
    int width = getWidth();
    int height = getHeight();
    return drawing
        .boxAt(event.getX(), event.getY(), width, height)
        .map(shown::tip)
        .or(() -> drawing.ribbonAt(event.getX(), event.getY(), width, height).map(shown::tip))
        .orElse(null);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    FlowDrawing drawing = drawing();
    if (drawing != null) {
      drawing.draw((Graphics2D) graphics, new Rectangle2D.Double(0, 0, getWidth(), getHeight()));
    }
  }

  @Override
  public Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return STEP;
  }

  @Override
  public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return Math.max(STEP, visible.height - STEP);
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() != null && getParent().getWidth() > getPreferredSize().width;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return getParent() != null && getParent().getHeight() > getPreferredSize().height;
  }

  /** A click selects a box; beside all boxes it selects nothing. */
  private final class Clicks extends MouseAdapter {
    @Override
    public void mousePressed(MouseEvent event) {
      requestFocusInWindow();
      if (columns != null) {
        select(drawing().boxAt(event.getX(), event.getY(), getWidth(), getHeight()));
      }
    }
  }
}
