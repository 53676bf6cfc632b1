package plyworth.workbench.desktop.session;

import java.awt.event.HierarchyEvent;
import javax.swing.JComponent;

/** Spares a view the work while another stands before it; it is shown what it missed later. */
public final class Sight {

  private final JComponent panel;
  private Session last;

  /**
   * Watches over a view.
   *
   * @param panel where the view is seen
   */
  public Sight(JComponent panel, View view) {
    this.panel = panel;
    panel.addHierarchyListener(
        event -> {
          boolean turned = (event.getChangeFlags() & HierarchyEvent.SHOWING_CHANGED) != 0;
          if (turned && last != null && panel.isShowing()) {
            view.show(last);
          }
        });
  }

  /** Whether to show a session now. What stands in no window counts as seen. */
  public boolean of(Session session) {
    last = session;
    return panel.isShowing() || !panel.isDisplayable();
  }
}
