package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.plugin.PluginEntry;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.PluginFault;

/** Plugins are looked at, set, switched off and taken up again, by the keyboard alone. */
class PluginJourneyTest {

  @TempDir Path folder;
  private OpenWindow window;
  private Keyboard keys;

  @BeforeEach
  void needsADisplay() {
    assumeFalse(GraphicsEnvironment.isHeadless());
  }

  @Test
  void pluginsAreSeenSetSwitchedOffAndTakenUpAgain() {
    PluginFault odd = new PluginFault("odd.jar", folder.resolve("odd.jar"), "it is no plugin");
    PluginCatalog catalog =
        new PluginCatalog(SmallStudy.CATALOG.folder(), SmallStudy.CATALOG.plugins(), List.of(odd));
    Path study = SmallStudy.file(folder, "mint", SmallStudy.few());
    try (OpenWindow plugged = OpenWindow.ranked(study, catalog)) {
      window = plugged;
      keys = new Keyboard(plugged);
      window.dress(Appearance.HIGH_CONTRAST);
      whatIsLoadedAndWhatIsFaultyIsSaid();
      aFormIsBuiltFromWhatAPluginDeclares();
      theRankingIsSeenWithoutIt();
      itIsTakenUpAgain();
    }
  }

  private void whatIsLoadedAndWhatIsFaultyIsSaid() {
    goTo("odd.jar");
    assertThat(facts()).contains("it is no plugin", "odd.jar");
    window.picture("plugins-1-fault-contrast");
    goTo("cost");
    assertThat(facts()).contains("0.1.0", ".jar");
  }

  private void goTo(String plugin) {
    window.shortcut(KeyEvent.VK_8, KeyEvent.VK_SHIFT);
    keys.awaits("plugins");
    JList<?> list = Screen.get("plugins", JList.class);
    keys.key(KeyEvent.VK_HOME);
    for (int i = 0; i < list.getModel().getSize() && !chosen(list).equals(plugin); i++) {
      keys.key(KeyEvent.VK_DOWN);
    }
    assertThat(chosen(list)).isEqualTo(plugin);
  }

  private static String chosen(JList<?> list) {
    return Screen.on(() -> ((PluginEntry) list.getSelectedValue()).name());
  }

  private String facts() {
    return window.text("plugin-facts", JTextComponent.class, JTextComponent::getText);
  }

  private void aFormIsBuiltFromWhatAPluginDeclares() {
    String before = window.head();
    keys.write("parameter:cost/margin", "2");
    keys.key(KeyEvent.VK_ENTER);
    Screen.await("it is refused", () -> words("parameter:cost/margin-refusal").contains("0.9"));
    keys.write("0.6");
    keys.key(KeyEvent.VK_ENTER);
    Screen.await("the ranking follows", () -> !window.head().equals(before));
    window.awaitRest();
    window.picture("plugins-2-form-contrast");
  }

  private void theRankingIsSeenWithoutIt() {
    goTo("cost");
    keys.press("plugin-use");
    Screen.await("it is said", () -> window.notice().contains("leaves out: Cost"));
    window.awaitRest();
    window.picture("plugins-3-left-out-contrast");
    window.goTo(2);
    Screen.await("its column is gone", () -> !hasCost());
    window.picture("plugins-4-without-contrast");
  }

  private static boolean hasCost() {
    JTable table = Screen.get("ranking-table", JTable.class);
    for (int c = 0; c < table.getColumnCount(); c++) {
      if (table.getColumnName(c).contains("Cost per")) {
        return true;
      }
    }
    return false;
  }

  private void itIsTakenUpAgain() {
    window.shortcut(KeyEvent.VK_Z);
    Screen.await("its column is back", PluginJourneyTest::hasCost);
    assertThat(window.notice()).doesNotContain("leaves out");
  }

  private static String words(String name) {
    return Screen.on(() -> Screen.find(name, JTextArea.class).map(JTextArea::getText).orElse(""));
  }
}
