package plyworth.workbench.desktop;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.Words;

/**
 * Leads from the question to the decision, one note at a time, each beside the part of the window
 * that it is about. Lies over the window and lets through what does not concern the note, so that
 * everything can be tried on the way.
 */
final class Tour extends JComponent {

  private static final long serialVersionUID = 1L;

  private final transient Container window;
  private final transient Consumer<String> visit;
  private final JPanel note = new JPanel(new BorderLayout(0, 8));
  private final JTextArea head = StackPanel.words("", Font.BOLD);
  private final JTextArea said = StackPanel.words("", Font.PLAIN);
  private final transient Command back = Command.of("tour.back", null, () -> step(-1));
  private final transient Command next = Command.of("tour.next", null, () -> step(1));
  private final JButton onward = next.named(new JButton(next), "button:");
  private int stop;

  /**
   * A tour.
   *
   * @param window what is shown around
   * @param visit brings a place into sight, by the key of its command
   */
  Tour(Container window, Consumer<String> visit) {
    this.window = window;
    this.visit = visit;
    setName("tour");
    head.setName("tour-head");
    said.setName("tour-said");
    Command end = Command.of("tour.end", null, this::end);
    JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, 8, 0));
    Stream.of(end, back).map(c -> c.named(new JButton(c), "button:")).forEach(buttons::add);
    buttons.add(onward);
    JPanel words = new StackPanel();
    words.add(head);
    words.add(said);
    note.add(words, BorderLayout.CENTER);
    note.add(buttons, BorderLayout.SOUTH);
    note.setName("tour-note");
    add(note);
    Stream.of(note, onward).forEach(part -> Keys.bind(part, "ESCAPE", this::end));
  }

  private void step(int step) {
    go(stop + step);
  }

  /** Begins at the first stop. */
  void begin() {
    setVisible(true);
    go(0);
  }

  private void end() {
    setVisible(false);
    visit.accept(TourStop.ALL.get(stop).place());
  }

  private void go(int to) {
    List<TourStop> stops = TourStop.ALL;
    if (to >= stops.size()) {
      end();
      return;
    }
    stop = to;
    visit.accept(stops.get(to).place());
    head.setText(Words.of("tour.head", to + 1, stops.size()));
    said.setText(Words.of(stops.get(to).key()));
    back.setEnabled(to > 0);
    boolean last = to == stops.size() - 1;
    onward.setText(Marked.of(last ? "tour.done" : "tour.next").text());
    note.getAccessibleContext().setAccessibleDescription(said.getText());
    revalidate();
    repaint();
    SwingUtilities.invokeLater(onward::requestFocusInWindow);
  }

  /** The part that the note is about; the whole window where it is out of sight. */
  private Rectangle framed() {
    return find(window, TourStop.ALL.get(stop).part())
        .map(part -> SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), this))
        .findFirst()
        .orElse(new Rectangle(getSize()));
  }

  private static Stream<Component> find(Component part, String name) {
    if (name.equals(part.getName()) && part.isShowing()) {
      return Stream.of(part);
    }
    return part instanceof Container container
        ? Stream.of(container.getComponents()).flatMap(child -> find(child, name))
        : Stream.of();
  }

  @Override
  public void doLayout() {
    int margin = UIScale.scale(10);
    note.setBorder(
        BorderFactory.createCompoundBorder(
            BorderFactory.createLineBorder(UIManager.getColor("Component.focusColor"), 2),
            BorderFactory.createEmptyBorder(margin, margin, margin, margin)));
    int width = Math.min(UIScale.scale(360), getWidth());
    note.setSize(width, 1);
    note.validate();
    Dimension size = new Dimension(width, note.getPreferredSize().height);
    note.setBounds(new Rectangle(place(framed(), size), size));
    note.validate();
  }

  /** Beside the part on the roomier side, or else inside it at the foot. */
  private Point place(Rectangle part, Dimension note) {
    int gap = UIScale.scale(12);
    int right = getWidth() - (part.x + part.width) - gap;
    int left = part.x - gap;
    int middle = part.y + (part.height - note.height) / 2;
    int y = Math.max(gap, Math.min(middle, getHeight() - note.height - gap));
    if (right >= note.width || left >= note.width) {
      return new Point(right >= left ? part.x + part.width + gap : part.x - gap - note.width, y);
    }
    int foot = part.y + part.height - note.height - gap;
    return new Point(part.x + part.width - note.width - gap, Math.max(gap, foot));
  }

  @Override
  public boolean contains(int x, int y) {
    return note.getBounds().contains(x, y);
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setColor(UIManager.getColor("Component.focusColor"));
    g.setStroke(new BasicStroke(UIScale.scale(3f)));
    Rectangle frame = framed();
    g.draw(frame);
    g.dispose();
  }
}
