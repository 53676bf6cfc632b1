package plyworth.workbench.desktop.part;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.AbstractButton;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JToggleButton;

/**
 * The buttons of a part of the window as commands, by where they stand: found by looking, so that
 * none is forgotten.
 */
public final class ButtonCommands {

  private static final String FOR_THE_KEYBOARD = " ?\\(\\p{Upper}\\)(?=\\p{Punct}|…|$)";

  private static final String PLACE = "plyworth.place";

  private final Map<String, List<Command>> found = new LinkedHashMap<>();
  private final String title;
  private final Runnable before;

  private ButtonCommands(String title, Runnable before) {
    this.title = title;
    this.before = before;
  }

  /** Says where in its part of the window the buttons of a panel stand. */
  public static void place(JComponent panel, String name) {
    panel.putClientProperty(PLACE, name);
  }

  /**
   * The commands, by the title of the part and the place in it.
   *
   * @param title what the part is called
   * @param before brings it into sight
   */
  public static Map<String, List<Command>> of(String title, JComponent part, Runnable before) {
    ButtonCommands commands = new ButtonCommands(title, before);
    commands.look(part, title);
    return commands.found;
  }

  private void look(Container around, String place) {
    for (Component each : around.getComponents()) {
      if (each instanceof JButton || each instanceof JToggleButton) {
        add((AbstractButton) each, place);
      } else if (each instanceof Container inner) {
        Object named = inner instanceof JComponent c ? c.getClientProperty(PLACE) : null;
        look(inner, named == null ? place : title + ", " + named);
      }
    }
  }

  private void add(AbstractButton button, String place) {
    String name = name(button);
    if (!name.isEmpty()) {
      found
          .computeIfAbsent(place, p -> new ArrayList<>())
          .add(Command.pressing(button, name, before));
    }
  }

  private static String name(AbstractButton button) {
    Action action = button.getAction();
    String text = action instanceof Command command ? command.title() : button.getText();
    return text == null ? "" : text.replaceAll(FOR_THE_KEYBOARD, "").strip();
  }
}
