package plyworth.workbench.desktop;

import java.awt.event.KeyEvent;
import java.util.List;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JToolBar;

/** Everything the user can do, in one place; menus and tool bar are made from it. */
final class Commands {

  final Command open;
  final Command save;
  final Command saveAs;
  final Command quit;
  final Command undo;
  final Command redo;
  final Command stop;
  final Command light;
  final Command dark;

  Commands(WorkbenchFrame frame, Session session) {
    open = Command.of("action.open", KeyEvent.VK_O, false, frame::chooseAndOpen);
    save = Command.of("action.save", KeyEvent.VK_S, false, frame::save);
    saveAs = Command.of("action.save-as", KeyEvent.VK_S, true, frame::saveAs);
    quit = Command.of("action.quit", KeyEvent.VK_Q, false, frame::closeAfterAsking);
    undo = Command.of("action.undo", KeyEvent.VK_Z, false, session::undo);
    redo = Command.of("action.redo", KeyEvent.VK_Z, true, session::redo);
    stop = Command.of("action.cancel", session::stop);
    light = Command.of("action.light", () -> frame.dress(Appearance.LIGHT));
    dark = Command.of("action.dark", () -> frame.dress(Appearance.DARK));
  }

  /** Puts names and enabled states right. */
  void show(Session session) {
    StudyHistory history = session.history();
    undo.setEnabled(history.undoLabel().isPresent());
    undo.rename(
        history
            .undoLabel()
            .map(l -> Words.of("action.undo.named", l))
            .orElse(Words.of("action.undo")));
    redo.setEnabled(history.redoLabel().isPresent());
    redo.rename(
        history
            .redoLabel()
            .map(l -> Words.of("action.redo.named", l))
            .orElse(Words.of("action.redo")));
    save.setEnabled(history.dirty());
    stop.setEnabled(session.scoring());
  }

  JMenuBar menuBar() {
    JMenuBar bar = new JMenuBar();
    bar.add(menu("menu.file", KeyEvent.VK_F, List.of(open, save, saveAs, quit)));
    bar.add(menu("menu.edit", KeyEvent.VK_E, List.of(undo, redo, stop)));
    bar.add(menu("menu.view", KeyEvent.VK_V, List.of(light, dark)));
    return bar;
  }

  private static JMenu menu(String key, int mnemonic, List<Command> commands) {
    JMenu menu = new JMenu(Words.of(key));
    menu.setMnemonic(mnemonic);
    commands.forEach(menu::add);
    return menu;
  }

  JToolBar toolBar() {
    JToolBar bar = new JToolBar();
    bar.setFloatable(false);
    List.of(open, save, undo, redo).forEach(bar::add);
    return bar;
  }
}
