package plyworth.workbench.desktop;

import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.Action;
import javax.swing.ButtonGroup;
import javax.swing.JComponent;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.JToolBar;
import javax.swing.KeyStroke;
import plyworth.shared.data.Choice;
import plyworth.shared.study.Decision;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.TextSize;
import plyworth.workbench.desktop.part.ViewStrip;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.StudyHistory;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.Words;

/** Everything the user can do, in one place; menus and tool bar are made from it. */
final class Commands {

  final Command stop;
  final Command again;
  private final Command fresh;
  private final Command open;
  private final Command save;
  private final Command saveAs;
  private final Command quit;
  private final Command undo;
  private final Command redo;
  private final Command why;
  private final Command pin;
  private final Command decide;
  private final Command withdraw;
  private final Command remark;
  private final Command eachKind;
  private final Command all;
  private final Command brief;
  private final Command find;
  private final Command alone;
  private final Command tour;
  private final Map<Appearance, Command> appearances = new EnumMap<>(Appearance.class);
  private final Map<TextSize, Command> sizes = new EnumMap<>(TextSize.class);
  private final Map<Language, Command> languages = new EnumMap<>(Language.class);
  private final List<Command> places;
  private final RecentMenu recent;

  Commands(WorkbenchFrame frame, Session session, List<Place> places) {
    fresh = Command.of("action.new", menu(KeyEvent.VK_N, 0), frame::newStudy);
    brief = Command.of("action.brief", menu(KeyEvent.VK_B, 0), frame::editBrief);
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
    decide = Command.of("action.decide", menu(KeyEvent.VK_D, 0), frame::decide);
    withdraw = Command.of("action.withdraw", null, frame::withdraw);
    remark = Command.of("action.remark", menu(KeyEvent.VK_M, 0), frame::remark);
    eachKind = Command.of("action.each-kind", menu(KeyEvent.VK_K, 0), () -> session.list(true));
    all = Command.of("action.all", menu(KeyEvent.VK_L, 0), () -> session.list(false));
    find =
        Command.of(
            "action.find", menu(KeyEvent.VK_P, InputEvent.SHIFT_DOWN_MASK), frame::findCommand);
    alone = Command.of("action.alone", KeyStroke.getKeyStroke(KeyEvent.VK_F11, 0), frame::alone);
    tour = Command.of("action.tour", KeyStroke.getKeyStroke(KeyEvent.VK_F1, 0), frame::tour);
    for (Appearance appearance : Appearance.values()) {
      String key = "appearance." + Choice.plain(appearance);
      appearances.put(appearance, Command.of(key, null, () -> frame.dress(appearance)));
    }
    for (TextSize size : TextSize.values()) {
      String key = "text-size." + Choice.plain(size);
      sizes.put(size, Command.of(key, null, () -> frame.size(size)));
    }
    recent = new RecentMenu(frame);
    for (Language language : Language.values()) {
      String key = "language." + Choice.plain(language);
      languages.put(language, Command.of(key, null, () -> frame.speak(language)));
    }
    this.places = places.stream().map(Commands::place).toList();
  }

  private static Command place(Place place) {
    int key = KeyEvent.VK_0 + place.number() % 10;
    int more = place.number() < 10 ? 0 : InputEvent.SHIFT_DOWN_MASK;
    return Command.of(place.key(), menu(key, more), place.show());
  }

  /** Goes to a place by the key of its command. */
  void visit(String key) {
    places.stream().filter(place -> place.key().equals(key)).forEach(Command::start);
  }

  /** A part of the window that can be gone to by its number; from 10 on with Shift. */
  record Place(String key, int number, Runnable show) {

    /** A view among tabs, and what the keyboard then works on. */
    static Place of(String key, int number, ViewStrip tabs, JComponent view, JComponent target) {
      return new Place(
          key,
          number,
          () -> {
            tabs.bring(view);
            target.requestFocusInWindow();
          });
    }
  }

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
    boolean free = !session.writing();
    save.setEnabled(free && history.filter(StudyHistory::dirty).isPresent());
    saveAs.setEnabled(free && history.isPresent());
    stop.setEnabled(session.scoring());
    again.setEnabled(history.isPresent() && !session.scoring());
    brief.setEnabled(history.isPresent());
    pin.setEnabled(canPin);
    boolean selected = session.selection().structure().isPresent();
    decide.setEnabled(selected);
    remark.setEnabled(selected);
    withdraw.setEnabled(
        session.study().filter(study -> !study.decision().equals(Decision.OPEN)).isPresent());
    why.setEnabled(session.ranked().isPresent());
    tour.setEnabled(session.ranked().isPresent());
    eachKind.putValue(Action.SELECTED_KEY, session.eachKind());
    all.putValue(Action.SELECTED_KEY, !session.eachKind());
    sizes.forEach(
        (size, command) -> command.putValue(Action.SELECTED_KEY, size == TextSize.inForce()));
    languages.forEach(
        (language, command) ->
            command.putValue(Action.SELECTED_KEY, language == Language.inForce()));
  }

  /** Ticks what is worn. */
  void show(Appearance appearance) {
    appearances.forEach(
        (each, command) -> command.putValue(Action.SELECTED_KEY, each == appearance));
  }

  /** A menu: commands that follow each other, then sets of which one at a time holds. */
  private record Group(String key, List<Command> commands, List<List<Command>> oneOf) {

    Group(String key, Command... commands) {
      this(key, List.of(commands), List.of());
    }
  }

  private List<Group> groups() {
    return List.of(
        new Group("menu.file", fresh, open, save, saveAs, quit),
        new Group("menu.edit", undo, redo, brief, find),
        new Group("menu.ranking", List.of(stop, again, why, pin), List.of(List.of(eachKind, all))),
        new Group("menu.decision", decide, withdraw, remark),
        new Group(
            "menu.view",
            Stream.concat(places.stream(), Stream.of(alone)).toList(),
            List.of(List.copyOf(appearances.values()), List.copyOf(sizes.values()))),
        new Group("menu.language", List.of(), List.of(List.copyOf(languages.values()))),
        new Group("menu.help", tour));
  }

  /** Every command by the name of its menu, in the order of the menus. */
  Map<String, List<Command>> byMenu() {
    Map<String, List<Command>> found = new LinkedHashMap<>();
    for (Group group : groups()) {
      List<Command> commands = new ArrayList<>(group.commands());
      group.oneOf().forEach(commands::addAll);
      found.put(Marked.of(group.key()).bare(), commands);
    }
    return found;
  }

  JMenuBar menuBar() {
    JMenuBar bar = new JMenuBar();
    groups().forEach(group -> bar.add(menu(group)));
    bar.getMenu(0).insert(recent.component(), 2);
    return bar;
  }

  private static JMenu menu(Group group) {
    Marked marked = Marked.of(group.key());
    JMenu menu = new JMenu(marked.text());
    menu.setName(group.key());
    menu.setMnemonic(marked.key());
    group.commands().forEach(command -> menu.add(command.menuItem()));
    group.oneOf().forEach(set -> addOneOf(set, menu));
    return menu;
  }

  private static void addOneOf(List<Command> set, JMenu menu) {
    if (menu.getItemCount() > 0) {
      menu.addSeparator();
    }
    ButtonGroup one = new ButtonGroup();
    for (Command command : set) {
      JRadioButtonMenuItem item = command.named(new JRadioButtonMenuItem(command), "menu:");
      one.add(item);
      menu.add(item);
    }
  }

  JToolBar toolBar() {
    JToolBar bar = new JToolBar();
    bar.setFloatable(false);
    bar.setName("tools");
    List.of(fresh, open, save, undo, redo).forEach(command -> bar.add(command.button()));
    return bar;
  }
}
