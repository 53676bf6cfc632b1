package plyworth.workbench.desktop;

import java.util.List;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;

/** The views of what figures rest on: what was measured, and the plugins. */
final class EvidenceViews {

  private final MeasuredView measured = new MeasuredView();
  private final PluginsView plugins = new PluginsView();

  List<View> views() {
    return List.of(measured, plugins);
  }

  /** Adds a tab for each. */
  void addTo(JTabbedPane tabs) {
    tabs.addTab(Words.of("view.measured"), measured.component());
    tabs.addTab(Words.of("view.plugins"), plugins.component());
  }

  /** Where they can be gone to by number. */
  List<Commands.Place> places(JTabbedPane tabs) {
    return List.of(
        place("place.measured", 17, tabs, measured.component(), measured.target()),
        place("place.plugins", 18, tabs, plugins.component(), plugins.target()));
  }

  private static Commands.Place place(
      String key, int number, JTabbedPane tabs, JComponent view, JComponent target) {
    return new Commands.Place(
        key,
        number,
        () -> {
          tabs.setSelectedComponent(view);
          target.requestFocusInWindow();
        });
  }

  /** Draws again, in the colours of the look and feel. */
  void redraw() {
    measured.redraw();
  }
}
