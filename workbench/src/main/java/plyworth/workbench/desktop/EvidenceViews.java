package plyworth.workbench.desktop;

import java.util.List;
import plyworth.workbench.desktop.evidence.MeasuredView;
import plyworth.workbench.desktop.part.ViewStrip;
import plyworth.workbench.desktop.plugin.PluginsView;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Words;

/** The views of what figures rest on: what was measured, and the plugins. */
final class EvidenceViews {

  private final MeasuredView measured = new MeasuredView();
  private final PluginsView plugins = new PluginsView();

  List<View> views() {
    return List.of(measured, plugins);
  }

  /** Adds a tab for each. */
  void addTo(ViewStrip tabs) {
    tabs.add(Words.of("view.measured"), measured.component());
    tabs.add(Words.of("view.plugins"), plugins.component());
  }

  /** Where they can be gone to by number. */
  List<Commands.Place> places(ViewStrip tabs) {
    return List.of(
        Commands.Place.of("place.measured", 17, tabs, measured.component(), measured.target()),
        Commands.Place.of("place.plugins", 18, tabs, plugins.component(), plugins.target()));
  }

  /** Draws again, in the colours of the look and feel. */
  void redraw() {
    measured.redraw();
  }
}
