package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.JCheckBox;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.PluginSettings;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.plugin.PluginEntry;
import plyworth.workbench.desktop.session.Remembered;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.PluginFault;

/** The plugins: what they say of themselves, which the study uses, and what is set of them. */
class PluginsWindowTest {

  private static final String MARGIN = "parameter:cost/margin";

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private OpenWindow open() {
    return OpenWindow.ranked(file, SmallStudy.CATALOG);
  }

  private static void goToPlugin(OpenWindow window, String id) {
    window.shortcut(KeyEvent.VK_8, KeyEvent.VK_SHIFT);
    JList<?> list = Screen.get("plugins", JList.class);
    Screen.await("the list has the keyboard", list::isFocusOwner);
    for (int i = 0; i < list.getModel().getSize() && !chosen(list).equals(id); i++) {
      window.hand.key(KeyEvent.VK_DOWN);
    }
    assertThat(chosen(list)).isEqualTo(id);
  }

  private static String chosen(JList<?> list) {
    return Screen.on(() -> ((PluginEntry) list.getSelectedValue()).name());
  }

  private static String value(String field) {
    return Screen.on(() -> Screen.get(field, JTextField.class).getText());
  }

  private static void type(OpenWindow window, String text) {
    JTextField field = Screen.get(MARGIN, JTextField.class);
    Screen.on(
        () -> {
          field.requestFocus();
          field.setText(text);
          return null;
        });
    Screen.await("the field has the keyboard", field::isFocusOwner);
    window.hand.key(KeyEvent.VK_ENTER);
  }

  private static boolean columns(String title) {
    JTable table = Screen.get("ranking-table", JTable.class);
    return Screen.on(
        () -> {
          for (int c = 0; c < table.getColumnCount(); c++) {
            if (table.getColumnName(c).contains(title)) {
              return true;
            }
          }
          return false;
        });
  }

  @Test
  void pluginLeftOutIsNotCountedAndTheStudyRemembersIt() {
    try (OpenWindow window = open()) {
      window.goTo(2);
      assertThat(columns("Cost per")).isTrue();
      goToPlugin(window, "cost");
      window.picture("plugins-light");
      JCheckBox use = Screen.get("plugin-use", JCheckBox.class);
      Screen.on(
          () -> {
            use.requestFocus();
            return null;
          });
      Screen.await("it has the keyboard", use::isFocusOwner);
      window.hand.key(KeyEvent.VK_SPACE);
      Screen.await("it is said", () -> window.notice().contains("leaves out: Cost"));
      window.awaitRest();
      window.picture("plugins-left-out-light");
      window.goTo(2);
      Screen.await("its column is gone", () -> !columns("Cost per"));
      window.shortcut(KeyEvent.VK_S);
      Screen.await(
          "it is saved",
          () -> PluginSettings.leftOut(StudyFile.open(file).study()).contains("cost"));
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("its column is back", () -> columns("Cost per"));
      assertThat(window.notice()).doesNotContain("leaves out");
    }
  }

  @Test
  void settingIsTakenByEnterUndoneAndPutBackToItsStandard() {
    try (OpenWindow window = open()) {
      goToPlugin(window, "cost");
      assertThat(value(MARGIN)).isEqualTo("0.18");
      String before = window.head();
      type(window, "0.6");
      Screen.await("it is set", () -> window.title().startsWith("•"));
      window.awaitRest();
      Screen.await("the ranking follows", () -> !window.head().equals(before));
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is undone", () -> value(MARGIN).equals("0.18"));
      type(window, "0.3");
      AbstractButton back = Screen.get("reset:cost/margin:parameter.reset", AbstractButton.class);
      Screen.await("it can be put back", back::isEnabled);
      Screen.press("reset:cost/margin:parameter.reset");
      Screen.await("it is back", () -> value(MARGIN).equals("0.18"));
      assertThat(window.title()).doesNotStartWith("•");
    }
  }

  @Test
  void settingOutOfItsBoundsIsRefusedBesideTheField() {
    try (OpenWindow window = open()) {
      goToPlugin(window, "cost");
      type(window, "1,2");
      Screen.await("it is refused", () -> refusal().contains("from 0 to 0.9"));
      assertThat(value(MARGIN)).isEqualTo("1,2");
      assertThat(window.title()).doesNotStartWith("•");
      window.picture("plugins-refused-light");
      type(window, "0.2");
      Screen.await("it is taken", () -> window.title().startsWith("•"));
      Screen.await("nothing is wrong", () -> refusal().isEmpty());
    }
  }

  private static String refusal() {
    return Screen.find(MARGIN + "-refusal", JTextArea.class).map(JTextArea::getText).orElse("");
  }

  @Test
  void everyCriterionIsExplainedWithItsFormula() {
    try (OpenWindow window = open()) {
      goToPlugin(window, "barrier");
      assertThat(window.words("plugin-criteria"))
          .contains("barrier/otr", "Polymer Journal 36 (2004) 386");
      window.dress(Appearance.DARK);
      window.picture("plugins-dark");
    }
  }

  @Test
  void refusedPluginIsListedWithItsReason() {
    PluginCatalog one =
        new PluginCatalog(
            SmallStudy.CATALOG.folder(),
            SmallStudy.CATALOG.plugins(),
            List.of(new PluginFault("odd.jar", folder.resolve("odd.jar"), "it is no plugin")));
    try (OpenWindow window = OpenWindow.ranked(file, one)) {
      goToPlugin(window, "odd.jar");
      assertThat(window.text("plugin-facts", JTextComponent.class, JTextComponent::getText))
          .contains("it is no plugin");
      window.picture("plugins-refused-jar-light");
    }
  }

  @Test
  void withoutAnyPluginNothingIsCountedAndAllCanBeTakenUpAgain() {
    Path none =
        SmallStudy.file(
            folder,
            "none",
            SmallStudy.few()
                .withSettings(
                    Map.of(
                        "barrier", Map.of("in-use", 0.0),
                        "cost", Map.of("in-use", 0.0),
                        "machinability", Map.of("in-use", 0.0),
                        "print-method", Map.of("in-use", 0.0),
                        "recyclability", Map.of("in-use", 0.0),
                        "supply", Map.of("in-use", 0.0))));
    try (OpenWindow window = OpenWindow.opened(none, SmallStudy.CATALOG)) {
      Screen.await("it is said", () -> window.notice().contains("Barrier, Machinability"));
      goToPlugin(window, "cost");
      Screen.press("plugin-use");
      Screen.await("one is counted", () -> !window.notice().contains("Cost"));
    }
  }

  @Test
  void pluginsSpeakChinese() {
    Remembered remembered = OpenWindow.newcomer(file);
    remembered.language(Language.CHINESE);
    try (OpenWindow window = OpenWindow.opened(file, SmallStudy.CATALOG, remembered)) {
      Screen.await("it is ranked", () -> window.status().contains("150"));
      goToPlugin(window, "cost");
      window.picture("plugins-chinese");
      assertThat(Screen.get("plugin-use", JCheckBox.class).getText()).contains("使用此插件");
    }
  }
}
