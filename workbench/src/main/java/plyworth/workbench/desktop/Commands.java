package plyworth.workbench.desktop;

import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.ButtonGroup;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.JToolBar;
import javax.swing.KeyStroke;

/** Everything the user can do, in one place; menus and tool bar are made from it. */
final class Commands {

  final Command stop;
  final Command again;
  private final Command open;
  private final Command save;
  private final Command saveAs;
  private final Command quit;
  private final Command undo;
  private final Command redo;
  private final Command why;
  private final Command pin;
  private final Command eachKind;
  private final Command all;
  private final Command light;
  private final Command dark;
  private final List<Command> places;

  Commands(WorkbenchFrame frame, Session session) {
    open = Command.of("action.open", menu(KeyEvent.VK_O, 0), frame::chooseAndOpen);
    save = Command.of("action.save", menu(KeyEvent.VK_S, 0), frame::save);
    saveAs =
        Command.of(
            "action.save-as", menu(KeyEvent.VK_S, InputEvent.SHIFT_DOWN_MASK), frame::saveAs);
    quit = Command.of("action.quit", menu(KeyEvent.VK_Q, 0), frame::closeAfterAsking);
    undo = Command.of("action.undo", menu(KeyEvent.VK_Z, 0), session::undo);
    redo =
        Command.of("action.redo", menu(KeyEvent.VK_Z, InputEvent.SHIFT_DOWN_MASK), session::redo);
    stop = Command.of("action.stop", menu(KeyEvent.VK_PERIOD, 0), session::stop);
    again =
        Command.of("action.again", KeyStroke.getKeyStroke(KeyEvent.VK_F5, 0), session::scoreAgain);
    why = Command.of("action.why", menu(KeyEvent.VK_I, 0), frame::inquire);
    pin = Command.of("action.pin", menu(KeyEvent.VK_P, 0), frame::pin);
    eachKind = Command.of("action.each-kind", menu(KeyEvent.VK_K, 0), () -> session.list(true));
    all = Command.of("action.all", menu(KeyEvent.VK_L, 0), () -> session.list(false));
    light = Command.of("action.light", null, () -> frame.dress(Appearance.LIGHT));
    dark = Command.of("action.dark", null, () -> frame.dress(Appearance.DARK));
    places = frame.places().stream().map(Commands::place).toList();
  }

  private static Command place(Place place) {
    int key = KeyEvent.VK_0 + place.number() % 10;
    int more = place.number() < 10 ? 0 : InputEvent.SHIFT_DOWN_MASK;
    return Command.of(place.key(), menu(key, more), place.show());
  }

  /** A part of the window that can be gone to by its number; from 10 on with Shift. */
  record Place(String key, int number, Runnable show) {}

  private static KeyStroke menu(int letter, int more) {
    return KeyStroke.getKeyStroke(
        letter, Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx() | more);
  }

  /** Puts names and enabled states right. */
  void show(Session session, boolean canPin) {
    Optional<StudyHistory> history = session.history();
    Optional<String> undoing = history.flatMap(StudyHistory::undoLabel);
    Optional<String> redoing = history.flatMap(StudyHistory::redoLabel);
    undo.setEnabled(undoing.isPresent());
    undo.name(Words.of("action.undo.named", undoing.orElse("")).strip());
    redo.setEnabled(redoing.isPresent());
    redo.name(Words.of("action.redo.named", redoing.orElse("")).strip());
    save.setEnabled(history.filter(StudyHistory::dirty).isPresent());
    saveAs.setEnabled(history.isPresent());
    stop.setEnabled(session.scoring());
    again.setEnabled(history.isPresent() && !session.scoring());
    pin.setEnabled(canPin);
    why.setEnabled(session.ranked().isPresent());
    eachKind.putValue(Action.SELECTED_KEY, session.eachKind());
    all.putValue(Action.SELECTED_KEY, !session.eachKind());
  }

  /** Ticks what is worn. */
  void show(Appearance appearance) {
    light.putValue(Action.SELECTED_KEY, appearance == Appearance.LIGHT);
    dark.putValue(Action.SELECTED_KEY, appearance == Appearance.DARK);
  }

  JMenuBar menuBar() {
    JMenuBar bar = new JMenuBar();
    bar.add(menu("menu.file", List.of(open, save, saveAs, quit)));
    bar.add(menu("menu.edit", List.of(undo, redo)));
    JMenu ranking = menu("menu.ranking", List.of(stop, again, why, pin));
    oneOf(ranking, List.of(eachKind, all));
    bar.add(ranking);
    JMenu view = menu("menu.view", places);
    oneOf(view, List.of(light, dark));
    bar.add(view);
    return bar;
  }

  /** Adds commands of which one at a time holds. */
  private static void oneOf(JMenu menu, List<Command> commands) {
    menu.addSeparator();
    ButtonGroup group = new ButtonGroup();
    for (Command command : commands) {
      JRadioButtonMenuItem item = command.named(new JRadioButtonMenuItem(command), "menu:");
      group.add(item);
      menu.add(item);
    }
  }

  private static JMenu menu(String key, List<Command> commands) {
    Marked marked = Marked.of(key);
    JMenu menu = new JMenu(marked.text());
    menu.setName(key);
    menu.setMnemonic(marked.key());
    commands.forEach(command -> menu.add(command.menuItem()));
    return menu;
  }

  JToolBar toolBar() {
    JToolBar bar = new JToolBar();
    bar.setFloatable(false);
    bar.setName("tools");
    List.of(open, save, undo, redo).forEach(command -> bar.add(command.button()));
    return bar;
  }
}
