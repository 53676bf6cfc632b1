package plyworth.workbench.desktop.brief;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.JComponent;
import javax.swing.JTextField;
import plyworth.workbench.desktop.part.Typed;

/** One line; what stands in it is selected when the keyboard comes to it. */
final class LineInput implements BriefInput {

  private final JTextField line = new JTextField();

  LineInput(Runnable changed) {
    Typed.into(line, changed);
    line.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent event) {
            line.selectAll();
          }
        });
  }

  @Override
  public JComponent component() {
    return line;
  }

  @Override
  public JComponent target() {
    return line;
  }

  @Override
  public String text() {
    return line.getText();
  }

  @Override
  public void show(String text) {
    line.setText(text);
    line.setCaretPosition(0);
  }
}
