package plyworth.workbench.desktop;

import java.util.List;
import plyworth.workbench.desktop.material.MaterialsView;
import plyworth.workbench.desktop.material.QuestionsView;
import plyworth.workbench.desktop.part.ViewStrip;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.Words;

/** The views of the data that the study reckons with: what is known, and what is worth knowing. */
final class DataViews {

  private final MaterialsView materials = new MaterialsView();
  private final QuestionsView questions;

  /**
   * The views.
   *
   * @param tabs where they will stand
   */
  DataViews(ViewStrip tabs) {
    questions =
        new QuestionsView(
            (material, property) -> {
              tabs.bring(materials.component());
              materials.open(material, property);
            });
  }

  List<View> views() {
    return List.of(materials, questions);
  }

  /** Adds a tab for each. */
  void addTo(ViewStrip tabs) {
    tabs.add(Words.of("view.materials"), materials.component());
    tabs.add(Words.of("view.questions"), questions.component());
  }

  /** Where they can be gone to by number. */
  List<Commands.Place> places(ViewStrip tabs) {
    return List.of(
        Commands.Place.of("place.materials", 13, tabs, materials.component(), materials.target()),
        Commands.Place.of("place.questions", 14, tabs, questions.component(), questions.target()));
  }
}
