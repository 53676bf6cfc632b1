package plyworth.workbench.desktop.material;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javax.swing.JTextField;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Scale;

/**
 * A field for a figure, typed in the unit shown or with a unit of its own. A figure that nobody
 * touches stays as it is to the last digit, whatever unit it is shown in.
 */
final class QuantityField {

  private static final int WIDTH = 7;

  private final JTextField field = new JTextField(WIDTH);
  private final String called;
  private Scale scale;
  private double figure;
  private String shown;

  /**
   * A field.
   *
   * @param called what the figure is called, for messages and for those who listen to the screen
   * @param figure in the unit in which it is kept; NaN for none yet
   */
  QuantityField(String name, String called, Scale scale, double figure) {
    this.called = called;
    this.scale = scale;
    field.setName(name);
    field.getAccessibleContext().setAccessibleName(called);
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            field.selectAll();
          }
        });
    put(figure);
  }

  JTextField component() {
    return field;
  }

  /** Puts another figure in. */
  void put(double other) {
    figure = other;
    shown = scale.typed(other);
    field.setText(shown);
  }

  /** Shows the figure in another unit; what cannot be read stays as it was typed. */
  void show(Scale other) {
    Scale.Reading read = read();
    scale = other;
    if (read.good() || read.trouble() == Scale.Trouble.EMPTY) {
      put(read.figure());
    }
  }

  /** What stands there now. */
  Scale.Reading read() {
    boolean untouched = field.getText().equals(shown) && !Double.isNaN(figure);
    return untouched ? new Scale.Reading(figure, Scale.Trouble.NONE) : scale.read(field.getText());
  }

  /** What stands there now; what is wrong with it is said and marked. */
  OptionalDouble read(Consumer<String> wrong) {
    Scale.Reading read = read();
    mark(!read.good());
    if (read.good()) {
      return OptionalDouble.of(read.figure());
    }
    String units = String.join(", ", scale.symbols()).strip();
    wrong.accept(
        switch (read.trouble()) {
          case EMPTY -> Words.of("entry.empty", called);
          case OTHER_UNIT ->
              units.isEmpty()
                  ? Words.of("entry.no-unit", called, field.getText().strip())
                  : Words.of("entry.other-unit", called, field.getText().strip(), units);
          default -> Words.of("entry.no-number", called, field.getText().strip());
        });
    return OptionalDouble.empty();
  }

  /** Marks the field as wrong or right. */
  void mark(boolean wrong) {
    field.putClientProperty("JComponent.outline", wrong ? "error" : null);
  }
}
