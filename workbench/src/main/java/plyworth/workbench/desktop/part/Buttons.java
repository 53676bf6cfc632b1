package plyworth.workbench.desktop.part;

import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Rows of small buttons. */
public final class Buttons {

  private Buttons() {}

  /** A small button of a command. */
  public static JButton of(String key, Runnable work) {
    Command command = Command.of(key, null, work);
    return small(command.named(new JButton(command), "button:"));
  }

  /** Makes a button small. */
  public static <B extends AbstractButton> B small(B button) {
    button.putClientProperty("FlatLaf.styleClass", "small");
    return button;
  }

  /** Small buttons of commands side by side. */
  public static JPanel row(Command... commands) {
    return row(
        Stream.of(commands)
            .map(command -> small(command.named(new JButton(command), "button:")))
            .toArray(JComponent[]::new));
  }

  /** Buttons side by side. */
  public static JPanel row(JComponent... buttons) {
    JPanel row = new WrappingRow(6, 2);
    row.setBorder(BorderFactory.createEmptyBorder(0, -6, 0, 0));
    for (JComponent button : buttons) {
      row.add(button);
    }
    return row;
  }
}
