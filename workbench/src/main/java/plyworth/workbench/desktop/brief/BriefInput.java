package plyworth.workbench.desktop.brief;

import javax.swing.JComponent;

/** What an answer of the form is typed into. */
interface BriefInput {

  /** All of it. */
  JComponent component();

  /** The part that takes the keyboard. */
  JComponent target();

  /** The answer as it stands. */
  String text();

  /** Shows another answer. */
  void show(String text);

  /** Marks it as wrong, or as right again. */
  default void mark(boolean wrong) {
    component().putClientProperty("JComponent.outline", wrong ? "error" : null);
  }

  /** The input of a field, which tells of every change. */
  static BriefInput of(BriefField field, Runnable changed) {
    return switch (field.ask().how()) {
      case LINE, FIGURE -> new LineInput(changed);
      case AREA -> new AreaInput(3, changed);
      case NOTATION -> new AreaInput(5, changed);
      case MONTHS -> new MonthsInput(changed);
      case LINES -> new AreaInput(12, changed);
      case CHOICE -> new ChoiceInput(field.ask(), changed);
      case CHECKS -> new ChecksInput(field.ask(), changed);
    };
  }
}
