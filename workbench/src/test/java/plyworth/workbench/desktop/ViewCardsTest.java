package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.decision.SectionRow;
import plyworth.workbench.desktop.decision.StripCanvas;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.ChartCanvas;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.session.Recovery;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;

/** What the views of a decision say while there is nothing to see. */
class ViewCardsTest {

  @BeforeAll
  static void dress() {
    Screen.dress(Appearance.LIGHT);
  }

  @TempDir Path folder;

  @Test
  void withoutAStudyEveryViewSaysWhatToDo() {
    Screen.on(
        () -> {
          Session session =
              new Session(SmallStudy.CATALOG, new Recovery(folder.resolve("unsaved")));
          for (View view : new DecisionViews(() -> {}).views()) {
            view.show(session);
            List<String> said =
                Screen.all(view.component()).stream()
                    .filter(JLabel.class::isInstance)
                    .filter(part -> part.getName() != null && part.getName().endsWith("-empty"))
                    .map(part -> ((JLabel) part).getText())
                    .toList();
            assertThat(said)
                .containsExactly(
                    "No study is open. Open one or make a new one from the File menu.");
          }
          return null;
        });
  }

  @Test
  void everyPartThatTakesTheKeyboardHasANameThatCanBeRead() {
    Screen.on(
        () -> {
          List<View> views = new ArrayList<>(new DecisionViews(() -> {}).views());
          views.addAll(new EvidenceViews().views());
          for (View view : views) {
            Screen.all(view.component()).stream()
                .filter(
                    part ->
                        part instanceof ChartCanvas
                            || part instanceof StripCanvas
                            || part instanceof SectionRow
                            || part instanceof Page
                            || part instanceof javax.swing.JList
                            || part instanceof javax.swing.JTable)
                .forEach(
                    part ->
                        assertThat(part.getAccessibleContext().getAccessibleName())
                            .as(String.valueOf(part.getName()))
                            .isNotBlank());
          }
          return null;
        });
  }
}
