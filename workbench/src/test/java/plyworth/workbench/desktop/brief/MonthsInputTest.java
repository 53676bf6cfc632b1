package plyworth.workbench.desktop.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import plyworth.workbench.desktop.Screen;

class MonthsInputTest {

  private final AtomicInteger changes = new AtomicInteger();
  private final MonthsInput input = Screen.on(() -> new MonthsInput(changes::incrementAndGet));
  private final JTable table = (JTable) input.target();

  private String textAfter(Runnable work) {
    return Screen.on(
        () -> {
          work.run();
          return input.text();
        });
  }

  @Test
  void whatIsShownIsSaidAgainInTheSameWords() {
    String lines = ("18 °C, 70 %\n".repeat(11) + "64 °F, 80 %").strip();
    assertThat(textAfter(() -> input.show(lines))).isEqualTo(lines);
    assertThat(changes).hasValue(0);
    assertThat(textAfter(() -> input.show(""))).isEmpty();
    assertThat(table.getRowCount()).isEqualTo(12);
  }

  @Test
  void nothingThatWasWrittenIsLost() {
    String lines = "18, 70, 3\n".repeat(13).strip();
    assertThat(textAfter(() -> input.show(lines)).replace("\t", ", ")).isEqualTo(lines);
  }

  @Test
  void rowsOfASheetArePutInFromACellOn() {
    String text = textAfter(() -> input.put("18\t70\r\n64 °F\t75\r\n", 10, 1));
    assertThat(text.strip()).isEqualTo("18, 70\n64 °F, 75");
    assertThat(text.lines()).hasSize(12);
    assertThat(textAfter(() -> input.put("60\n65", 11, 2)).lines())
        .hasSize(13)
        .endsWith("64 °F, 60", "\t65");
    assertThat(changes.get()).isPositive();
  }

  @Test
  void aDecimalCommaStaysInItsCell() {
    assertThat(textAfter(() -> input.put("18,5\t70", 0, 1))).isEqualTo("18,5\t70");
  }

  @Test
  void whatIsBeingTypedCounts() {
    String text =
        textAfter(
            () -> {
              input.show("18, 70");
              table.editCellAt(0, 1);
              ((JTextField) table.getEditorComponent()).setText("21");
            });
    assertThat(text).isEqualTo("21, 70");
  }
}
