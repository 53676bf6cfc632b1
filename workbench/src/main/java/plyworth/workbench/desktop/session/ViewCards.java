package plyworth.workbench.desktop.session;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.word.Words;

/** A view, or one line that says why there is nothing to see yet. */
public final class ViewCards {

  private final CardLayout cards = new CardLayout();
  private final JPanel panel = new JPanel(cards);
  private final JLabel empty = new JLabel("", SwingConstants.CENTER);
  private final Sight sight;

  /**
   * The cards of a view.
   *
   * @param view shows the session again when it comes into sight
   */
  public ViewCards(String name, JComponent content, View view) {
    panel.setName(name);
    empty.setName(name + "-empty");
    empty.setBorder(BorderFactory.createEmptyBorder(20, 20, 20, 20));
    JPanel without = new JPanel(new BorderLayout());
    without.add(empty, BorderLayout.CENTER);
    panel.add(without, "empty");
    panel.add(content, "content");
    sight = new Sight(panel, view);
  }

  /** What is put into the window. */
  public JComponent component() {
    return panel;
  }

  /** The ranking with something in it, while in sight; where there is none, says why. */
  public Optional<Ranked> show(Session session) {
    Optional<Ranked> ranked = session.ranked().filter(r -> !r.best().isEmpty());
    if (ranked.isEmpty()) {
      empty.setText(nothing(session));
    }
    cards.show(panel, ranked.isPresent() ? "content" : "empty");
    boolean seen = sight.of(session);
    return ranked.filter(r -> seen);
  }

  /** Whether a study is open, while in sight, whatever is known of it; where none is, says so. */
  public boolean showOpen(Session session) {
    boolean open = session.study().isPresent();
    if (!open) {
      empty.setText(nothing(session));
    }
    cards.show(panel, open ? "content" : "empty");
    return sight.of(session) && open;
  }

  private static String nothing(Session session) {
    if (!session.failure().isEmpty()) {
      return Words.of("chart.failed");
    }
    if (session.ranked().isPresent()) {
      return Words.of("views.none-ranked");
    }
    return session.stage().map(Pipeline.Stage::text).orElse(Words.of("chart.no-study"));
  }
}
