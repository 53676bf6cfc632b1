package plyworth.workbench.desktop.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;

/**
 * The views of the middle, one at a time, with their tabs in one row as wide as the window: in the
 * middle they would stand in two, which change places.
 */
public final class ViewStrip {

  private static final Insets TAB_INSETS = new Insets(4, 8, 4, 8);

  private final JTabbedPane tabs = new JTabbedPane(JTabbedPane.TOP, JTabbedPane.SCROLL_TAB_LAYOUT);
  private final CardLayout cards = new CardLayout();
  private final JPanel middle = new JPanel(cards);
  private final List<JComponent> views = new ArrayList<>();

  /** A strip without views. */
  public ViewStrip() {
    tabs.setName("views");
    tabs.putClientProperty("JTabbedPane.tabInsets", TAB_INSETS);
    tabs.addChangeListener(event -> cards.show(middle, "" + tabs.getSelectedIndex()));
    middle.setName("view");
    middle.setMinimumSize(UIScale.scale(new Dimension(300, 200)));
  }

  /** Adds a view behind the others. */
  public void add(String title, JComponent view) {
    middle.add(view, "" + views.size());
    views.add(view);
    tabs.addTab(title, Box.createVerticalStrut(0));
  }

  /** Where the views are seen. */
  public JComponent middle() {
    return middle;
  }

  /** The tabs. */
  public JComponent tabs() {
    return tabs;
  }

  /** Brings a view to the front. */
  public void bring(JComponent view) {
    tabs.setSelectedIndex(views.indexOf(view));
  }

  /** The buttons of all views as commands, by the title of their view. */
  public Map<String, List<Command>> commands() {
    Map<String, List<Command>> found = new LinkedHashMap<>();
    for (int i = 0; i < views.size(); i++) {
      JComponent view = views.get(i);
      found.putAll(ButtonCommands.of(tabs.getTitleAt(i), view, () -> bring(view)));
    }
    return found;
  }

  /** The view in front, from 0. */
  public int front() {
    return tabs.getSelectedIndex();
  }

  /** Brings a view to the front by its number; the last where there are not so many. */
  public void bring(int view) {
    tabs.setSelectedIndex(Math.min(view, views.size() - 1));
  }
}
