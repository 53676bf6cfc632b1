package plyworth.workbench.desktop;

import java.util.List;
import plyworth.shared.structure.Structure;
import plyworth.workbench.desktop.decision.CompareView;
import plyworth.workbench.desktop.decision.ReviewView;
import plyworth.workbench.desktop.decision.RobustnessView;
import plyworth.workbench.desktop.decision.TradeOffView;
import plyworth.workbench.desktop.part.ViewStrip;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Words;

/** The views that a decision is made by, behind those that lead to it. */
final class DecisionViews {

  private final TradeOffView tradeOff = new TradeOffView();
  private final RobustnessView robustness = new RobustnessView();
  private final CompareView compare;
  private final ReviewView review = new ReviewView(robustness::drawn);

  /**
   * The views.
   *
   * @param changed told when what can be done has changed
   */
  DecisionViews(Runnable changed) {
    compare = new CompareView(changed);
  }

  List<View> views() {
    return List.of(tradeOff, robustness, compare, review);
  }

  /** Adds a tab for each. */
  void addTo(ViewStrip tabs) {
    tabs.add(Words.of("view.tradeoff"), tradeOff.component());
    tabs.add(Words.of("view.robustness"), robustness.component());
    tabs.add(Words.of("view.compare"), compare.component());
    tabs.add(Words.of("view.review"), review.component());
  }

  /** Whether the selected structure can be pinned for comparison. */
  boolean canPin() {
    return compare.canPin();
  }

  /** Pins the selected structure for comparison. */
  void pin() {
    compare.pin();
  }

  /** What is pinned for comparison. */
  List<Structure> pinned() {
    return compare.pinned();
  }

  /** Pins structures for comparison. */
  void pin(List<Structure> structures) {
    compare.pin(structures);
  }

  /** Where they can be gone to by number. */
  List<Commands.Place> places(ViewStrip tabs) {
    return List.of(
        Commands.Place.of("place.tradeoff", 9, tabs, tradeOff.component(), tradeOff.target()),
        Commands.Place.of(
            "place.robustness", 10, tabs, robustness.component(), robustness.target()),
        Commands.Place.of("place.compare", 11, tabs, compare.component(), compare.target()),
        Commands.Place.of("place.review", 12, tabs, review.component(), review.target()));
  }

  /** Draws again, in the colours of the look and feel. */
  void redraw() {
    tradeOff.redraw();
    robustness.redraw();
    compare.redraw();
    review.redraw();
  }
}
