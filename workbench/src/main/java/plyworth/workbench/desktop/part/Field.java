package plyworth.workbench.desktop.part;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Font;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;

/** A labelled field; what is wrong with what it holds is said right below it. */
public final class Field {

  private static final int GAP = 4;

  /** Text can come out a little wider than it was measured where a pixel is several. */
  private static final int ROOM = 4;

  private final JComponent input;
  private final JLabel label;
  private final StackPanel panel = new StackPanel();
  private final JLabel unit = new JLabel();
  private final JTextArea problem = StackPanel.words("", Font.BOLD);

  /**
   * A field.
   *
   * @param key of its label; its name is the key as well
   */
  public Field(String key, JComponent input) {
    this.input = input;
    input.setName(key);
    problem.setName(key + "-problem");
    problem.setVisible(false);
    label = Marked.label(key, input);
    label.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, ROOM));
    JPanel line = new JPanel(new BorderLayout(GAP, 0));
    line.add(label, BorderLayout.WEST);
    line.add(input, BorderLayout.CENTER);
    line.add(unit, BorderLayout.EAST);
    unit.setVisible(false);
    panel.setBorder(BorderFactory.createEmptyBorder(2, 0, 2, 0));
    panel.add(line);
    panel.add(problem);
  }

  /** Lets the inputs of fields that stand below each other begin in one line. */
  public static void align(Field... fields) {
    int width = Stream.of(fields).mapToInt(f -> f.label.getPreferredSize().width).max().orElse(0);
    for (Field field : fields) {
      field.label.setPreferredSize(new Dimension(width, field.label.getPreferredSize().height));
    }
  }

  /** What is put into a form. */
  public JComponent component() {
    return panel;
  }

  /** Shows the unit of what is typed, behind the field. */
  public void unit(String symbol) {
    unit.setText(symbol + " ");
    unit.setVisible(!symbol.isEmpty());
  }

  /** Says what is wrong, and gives the field the keyboard. */
  public void refuse(String reason) {
    say(reason);
    input.putClientProperty("JComponent.outline", "error");
    input.requestFocusInWindow();
  }

  /** Says something that is no error. */
  public void say(String words) {
    if (!words.equals(problem.getText())) {
      problem.setText(words);
      problem.setVisible(!words.isEmpty());
      input.getAccessibleContext().setAccessibleDescription(words);
      panel.revalidate();
    }
  }

  /** Takes back what was said. */
  public void accept() {
    say("");
    input.putClientProperty("JComponent.outline", null);
  }
}
