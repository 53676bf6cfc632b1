package plyworth.workbench.desktop.brief;

import java.awt.Font;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import plyworth.shared.data.Choice;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.Words;

/** A field of the form: its name, what it is typed into, and beside it a hint or what is wrong. */
final class BriefRow {

  private final BriefField field;
  private final BriefInput input;
  private final JLabel label;
  private final JTextArea note = StackPanel.words("", Font.PLAIN);

  BriefRow(BriefField field, Runnable changed) {
    this.field = field;
    input = BriefInput.of(field, changed);
    String name = Choice.plain(field);
    input.target().setName("field:" + name);
    note.setName("note:" + name);
    label = new JLabel(field.title());
    label.setLabelFor(input.target());
    input.target().addFocusListener(new Coming());
  }

  BriefField field() {
    return field;
  }

  JLabel label() {
    return label;
  }

  BriefInput input() {
    return input;
  }

  JTextArea note() {
    return note;
  }

  /**
   * Shows what is to be said of it.
   *
   * @param fault what is wrong; empty when nothing is
   * @param remark what it comes to; may be empty
   */
  void judge(String fault, String remark) {
    boolean wrong = !fault.isEmpty();
    input.mark(wrong);
    String said = wrong ? "✗ " + fault : (remark + "  " + hint()).strip();
    if (!said.equals(note.getText())) {
      note.setText(said);
    }
    note.setFont(UIManager.getFont("Label.font").deriveFont(wrong ? Font.BOLD : Font.PLAIN));
    note.setForeground(
        wrong ? UIManager.getColor("Label.foreground") : Appearance.chartTheme().muted());
    if (input.target().isFocusOwner()) {
      describe();
    }
  }

  /** Says the note to those who hear the field that has the keyboard. */
  private void describe() {
    input.target().getAccessibleContext().setAccessibleDescription(note.getText());
  }

  /** Units that may be typed, and what else is good to know. */
  private String hint() {
    Ask ask = field.ask();
    String own = ask.hinted() ? Words.of("form.hint." + Choice.plain(field)) : "";
    String units = ask.measure() == null ? "" : ask.measure().symbols();
    return String.join("  ", List.of(units, own)).strip();
  }

  /** Shows or hides all of it. */
  void setVisible(boolean visible) {
    for (JComponent part : List.of(label, input.component(), note)) {
      part.setVisible(visible);
    }
  }

  /** Brings it into sight when the keyboard comes to it. */
  private final class Coming extends FocusAdapter {
    @Override
    public void focusGained(FocusEvent event) {
      describe();
      JComponent shown = input.component();
      ((JComponent) shown.getParent()).scrollRectToVisible(shown.getBounds());
    }
  }
}
