package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JDialog;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.material.Material;
import plyworth.shared.material.SourceKind;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.word.Language;

/** Materials and their figures, as their user finds, changes, takes out and reads them. */
class MaterialsWindowTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private OpenWindow open() {
    return open(file);
  }

  private static OpenWindow open(Path study) {
    OpenWindow window = OpenWindow.ranked(study, SmallStudy.CATALOG);
    window.shortcut(KeyEvent.VK_3, KeyEvent.VK_SHIFT);
    Screen.await(
        "the search has the keyboard",
        () ->
            Screen.find("materials-words", JTextField.class)
                .filter(f -> f.isFocusOwner())
                .isPresent());
    return window;
  }

  private static void set(String field, String text) {
    JTextField found = Screen.get(field, JTextField.class);
    Screen.on(
        () -> {
          found.setText(text);
          return null;
        });
  }

  /** Finds a material and one of its properties by typing. */
  private static void find(String material, String property) {
    set("materials-words", material);
    set("properties-words", property);
  }

  private static String leader(OpenWindow window) {
    return window.head();
  }

  private static String page(OpenWindow window) {
    return window.words("material-page");
  }

  private static String movement(OpenWindow window) {
    return window.text("movement", JTextArea.class, JTextArea::getText);
  }

  private static String message(String name) {
    return Screen.on(() -> Screen.find(name, JTextArea.class).map(JTextArea::getText).orElse(""));
  }

  private static void change() {
    press("button:materials.change");
    Screen.get("property-typical-1", JTextField.class);
  }

  private static String cell(String table, int row, int column) {
    return Screen.on(() -> Screen.get(table, JTable.class).getValueAt(row, column).toString());
  }

  private static void focused(String name) {
    JTextField field = Screen.get(name, JTextField.class);
    Screen.await(name + " has the keyboard", field::isFocusOwner);
  }

  private static Material saved(OpenWindow window, Path study, String id) {
    window.shortcut(KeyEvent.VK_S);
    Screen.await("it is saved", () -> !window.title().startsWith("•"));
    return StudyFile.open(study).study().materialsBefore().require(id);
  }

  /** 9 EUR/lb are 19.84 EUR/kg, by 0.453 592 37 kg to the pound. */
  @Test
  void aPriceTypedInPoundsByKeyboardAloneMovesTheRankingAndUndoTakesItBack() {
    try (OpenWindow window = open()) {
      String leader = leader(window);
      window.hand.type("ldpe");
      window.hand.key(KeyEvent.VK_DOWN);
      Screen.await(
          "the list has the keyboard", () -> Screen.get("materials", JTable.class).isFocusOwner());
      assertThat(cell("materials", 0, 1)).isEqualTo("ldpe");
      window.hand.mnemonic(KeyEvent.VK_Y);
      focused("properties-words");
      window.hand.type("price");
      window.hand.key(KeyEvent.VK_DOWN);
      Screen.await(
          "the properties have the keyboard",
          () -> Screen.get("properties", JTable.class).isFocusOwner());
      window.hand.key(KeyEvent.VK_ENTER);
      focused("property-typical-1");
      window.hand.mnemonic(KeyEvent.VK_U);
      Screen.await(
          "the units have the keyboard",
          () -> Screen.get("property-units", JComboBox.class).isFocusOwner());
      window.hand.key(KeyEvent.VK_DOWN);
      window.hand.key(KeyEvent.VK_DOWN);
      Screen.await(
          "US units are chosen",
          () -> Screen.get("property-units", JComboBox.class).getSelectedIndex() == 1);
      window.hand.mnemonic(KeyEvent.VK_T);
      focused("property-typical-1");
      window.hand.type("9");
      window.hand.mnemonic(KeyEvent.VK_B);
      setSource(window);
      window.picture("property-pounds");
      window.hand.key(KeyEvent.VK_ENTER);
      Screen.await("the dialog is gone", () -> Screen.find("property", JDialog.class).isEmpty());
      Screen.await("the move is told", () -> movement(window).startsWith("After price of"));
      window.awaitRest();
      assertThat(movement(window)).contains("Low-density polyethylene").contains("leads now");
      assertThat(page(window)).contains("19.8").contains("In the library");
      Screen.press("button:movement.all");
      window.picture("materials-moved-light");
      window.dress(Appearance.DARK);
      window.picture("materials-moved-dark");
      window.dress(Appearance.LIGHT);
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("nothing is told", () -> movement(window).isEmpty());
      Screen.await("the former order is back", () -> leader(window).equals(leader));
      assertThat(page(window)).doesNotContain("In the library");
    }
  }

  private static void setSource(OpenWindow window) {
    JTextField source = Screen.get("property-source-1", JTextField.class);
    Screen.on(source::requestFocusInWindow);
    Screen.await("the source has the keyboard", source::isFocusOwner);
    window.hand.key(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
    window.hand.type("offer of a resin maker");
  }

  @Test
  void aDearerLeaderFallsAndTheTableShowsWhoRose() {
    try (OpenWindow window = open()) {
      find("ldpe", "price");
      change();
      set("property-low-1", "50");
      set("property-typical-1", "60 EUR/kg");
      set("property-high-1", "40 EUR/lb");
      set("property-source-1", "an offer in writing");
      Screen.press("button:property.save");
      Screen.await("the move is told", () -> movement(window).startsWith("After price of"));
      assertThat(movement(window)).containsAnyOf("leads now", "rose");
      Screen.press("button:movement.all");
      JTable moves = Screen.get("movement-table", JTable.class);
      List<String> directions =
          Screen.on(
              () ->
                  IntStream.range(0, moves.getRowCount())
                      .mapToObj(row -> moves.getValueAt(row, 2).toString())
                      .toList());
      assertThat(directions).anyMatch(move -> move.startsWith("▲") || move.equals("came in"));
      assertThat(saved(window, file, "ldpe").figure("price", Double.NaN).high())
          .isCloseTo(88.18, within(0.01));
    }
  }

  @Test
  void whatIsWrongIsSaidBesideTheFieldAndNothingIsSaved() {
    try (OpenWindow window = open()) {
      find("kraft-paper", "price");
      change();
      Screen.press("button:property.save");
      Screen.await("what is unchanged is no edit", () -> !window.title().startsWith("•"));
      change();
      set("property-typical-1", "1,5");
      Screen.press("button:property.save");
      Screen.await(
          "no number",
          () -> message("property-message-1").contains("does not begin with a number"));
      set("property-typical-1", "1.5 mil");
      Screen.press("button:property.save");
      Screen.await(
          "no price", () -> message("property-message-1").contains("Use one of: EUR/kg, EUR/lb"));
      set("property-typical-1", "900");
      Screen.press("button:property.save");
      Screen.await(
          "out of order", () -> message("property-message-1").contains("Low must not exceed"));
      set("property-high-1", "2000");
      Screen.press("button:property.save");
      Screen.await(
          "out of bounds",
          () -> message("property-message-1").contains("between 0 and 1000 EUR/kg: the plugin"));
      set("property-low-1", "");
      set("property-source-1", " ");
      Screen.press("button:property.save");
      Screen.await(
          "no source",
          () ->
              message("property-message-1").contains("Low, figure 1: type a figure.")
                  && message("property-message-1").contains("say where the figure comes from"));
      window.picture("property-refused");
      window.hand.key(KeyEvent.VK_ESCAPE);
      Screen.await("it is left", () -> Screen.find("property", JDialog.class).isEmpty());
      assertThat(window.title()).doesNotStartWith("•");
    }
  }

  @Test
  void aNewFigureNeedsItsOwnSource() {
    try (OpenWindow window = open()) {
      find("kraft-paper", "price");
      change();
      set("property-typical-1", "1.4");
      Screen.press("button:property.band");
      Screen.press("button:property.save");
      Screen.await(
          "whose figure", () -> message("property-message-1").contains("the source of the former"));
      set("property-source-1", "invoice of last month");
      Screen.get("property-kind-1", JComboBox.class);
      Screen.press("button:property.save");
      Screen.await("it is an edit", () -> window.title().startsWith("•"));
      Material own = saved(window, file, "kraft-paper");
      assertThat(own.properties().get("price").points().get(0).source())
          .isEqualTo("invoice of last month");
      assertThat(own.figure("price", Double.NaN).typical()).isEqualTo(1.4);
    }
  }

  @Test
  void aTableTakesAnotherFigureAlongHumidity() {
    try (OpenWindow window = open()) {
      find("barrier-paper-high", "wv-humidity-factor");
      change();
      int rows = rowsOfFields();
      Screen.press("button:property.add");
      int number = rows + 1;
      Screen.get("property-at-" + number, JTextField.class);
      set("property-at-" + number, "50");
      set("property-low-" + number, "1");
      set("property-typical-" + number, "2");
      set("property-high-" + number, "3");
      set("property-source-" + number, "climate chamber, own test");
      Screen.press("button:property.save");
      Screen.await(
          "two at one place", () -> message("property-message").contains("a different place"));
      set("property-at-" + number, "60");
      window.picture("property-table");
      Screen.press("button:property.save");
      Screen.await("it is an edit", () -> window.title().startsWith("•"));
      Screen.await("it is said", () -> page(window).contains("At 60 % RH: 2 (1 to 3)"));
      assertThat(
              saved(window, file, "barrier-paper-high")
                  .properties()
                  .get("wv-humidity-factor")
                  .points())
          .anySatisfy(point -> assertThat(point.kind()).isEqualTo(SourceKind.MEASURED));
    }
  }

  private static int rowsOfFields() {
    int row = 1;
    while (Screen.find("property-typical-" + row, JTextField.class).isPresent()) {
      row++;
    }
    return row - 1;
  }

  @Test
  void anOwnMaterialBeginsAsACopyAndIsRemovedWhileUnused() {
    try (OpenWindow window = open()) {
      find("bopet", "");
      press("button:materials.copy");
      set("new-material-id", "Own Film");
      Screen.press("button:new-material.done");
      Screen.await(
          "the id does not do", () -> message("new-material-message").contains("does not do"));
      set("new-material-id", "ldpe");
      Screen.press("button:new-material.done");
      Screen.await("the id is taken", () -> message("new-material-message").contains("is taken"));
      set("new-material-id", "own-film");
      set("new-material-name", "Own film");
      window.picture("new-material");
      Screen.press("button:new-material.done");
      find("own-film", "");
      Screen.await("it is there", () -> page(window).contains("or has it alone"));
      assertThat(Screen.on(() -> button("button:materials.remove").isEnabled())).isTrue();
      Screen.press("button:materials.remove");
      Screen.await("it is gone", () -> page(window).contains("No material is found"));
      find("ldpe", "");
      Screen.await("it is used", () -> page(window).contains("so it cannot be removed"));
      assertThat(Screen.on(() -> button("button:materials.remove").isEnabled())).isFalse();
    }
  }

  private static AbstractButton button(String name) {
    return Screen.get(name, AbstractButton.class);
  }

  @Test
  void unknownIsADashWithItsReason() {
    try (OpenWindow window = open()) {
      find("kraft-paper", "o2-permeability");
      assertThat(cell("properties", 0, 2)).isEqualTo("–");
      assertThat(cell("properties", 0, 5)).contains("unknown");
      assertThat(page(window)).contains("Unknown: the material has no figure of it");
      find("ldpe", "price");
      Screen.press("button:materials.forget");
      Screen.await("it is unknown", () -> cell("properties", 0, 2).equals("–"));
      window.awaitRest();
      assertThat(page(window)).contains("In the library");
    }
  }

  private static String prices(Path csv) throws IOException {
    try (var lines = Files.lines(csv)) {
      return lines
          .filter(line -> line.startsWith("material,") || line.contains(",price,"))
          .collect(Collectors.joining("\n", "", "\n"));
    }
  }

  @Test
  void whatIsExportedIsEditedAndReadBackAfterAPreview() throws IOException {
    try (OpenWindow window = open()) {
      Path csv = folder.resolve("materials.csv");
      press("button:materials.export");
      window.choose(csv);
      Screen.await("it is written", () -> Files.exists(csv));
      String edited =
          prices(csv)
                  .replaceAll(
                      "(?m)^ldpe,price,.*$", "ldpe,price,,50,60,70,EUR/kg,measured,an offer")
              + "lpde,price,,1,1,1,EUR/kg,measured,an offer\n"
              + "cast-film,density,,890,900,910,kg/m3,measured,ISO 1183,"
              + "Cast film,polypropylene,film transparent web,film,,\n";
      Files.writeString(csv, edited);
      press("button:materials.import");
      window.choose(csv);
      Screen.get("preview-changes", JTable.class);
      assertThat(message("preview-said"))
          .contains("one new material, changes or adds 2 properties");
      assertThat(cell("preview-changes", 0, 0)).isEqualTo("Cast film");
      assertThat(cell("preview-changes", 0, 4)).contains("polypropylene; film, transparent, web");
      assertThat(cell("preview-changes", 2, 1)).isEqualTo("price");
      assertThat(cell("preview-changes", 2, 4)).contains("60 (50 to 70) EUR/kg");
      assertThat(cell("preview-refused", 0, 2)).contains("Did you mean \"ldpe\"?");
      window.picture("materials-preview");
      Screen.press("button:preview.take");
      Screen.await("the move is told", () -> movement(window).startsWith("After import"));
      window.awaitRest();
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is taken back", () -> movement(window).isEmpty());
    }
  }

  /** Presses a button that opens a dialog, which holds up whoever presses it. */
  private static void press(String name) {
    AbstractButton button = Screen.get(name, AbstractButton.class);
    SwingUtilities.invokeLater(button::doClick);
  }

  @Test
  void aFileThatIsNoTableOfFiguresIsRefusedWithTheColumnsItNeeds() throws IOException {
    try (OpenWindow window = open()) {
      Path csv = folder.resolve("wrong.csv");
      Files.writeString(csv, "name,price\nfoil,3\n");
      press("button:materials.import");
      window.choose(csv);
      assertThat(window.refusal()).contains("wrong.csv, line 1").contains("material,property,at");
      window.understand();
    }
  }

  @Test
  void theViewIsReadableInEveryDress() {
    try (OpenWindow window = open(SmallStudy.example(folder, "sugar-stick"))) {
      find("foil", "");
      window.picture("materials-light");
      window.dress(Appearance.DARK);
      window.picture("materials-dark");
      window.dress(Appearance.LIGHT);
      Screen.on(
          () -> {
            window.frame.speak(Language.CHINESE);
            return null;
          });
      window.shortcut(KeyEvent.VK_3, KeyEvent.VK_SHIFT);
      find("aluminium-foil", "price");
      change();
      window.picture("property-chinese");
      window.hand.key(KeyEvent.VK_ESCAPE);
      Screen.await("it is left", () -> Screen.find("property", JDialog.class).isEmpty());
      find("aluminium-foil", "");
      window.picture("materials-chinese");
      assertThat(page(window)).contains("铝箔");
    }
  }
}
