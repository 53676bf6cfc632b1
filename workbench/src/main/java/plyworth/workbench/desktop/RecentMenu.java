package plyworth.workbench.desktop;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.word.Words;

/** The files opened last, made anew each time the menu opens. */
final class RecentMenu {

  private final JMenu menu;
  private final WorkbenchFrame frame;

  RecentMenu(WorkbenchFrame frame) {
    this.frame = frame;
    Marked marked = Marked.of("menu.recent");
    menu = new JMenu(marked.text());
    menu.setMnemonic(marked.key());
    menu.setName("menu:recent");
    menu.addMenuListener(new Filling());
  }

  JMenu component() {
    return menu;
  }

  private void fill() {
    menu.removeAll();
    List<Path> files = frame.remembered().recent();
    for (int i = 0; i < files.size(); i++) {
      menu.add(item(i + 1, files.get(i)));
    }
    if (files.isEmpty()) {
      JMenuItem none = new JMenuItem(Words.of("menu.recent.none"));
      none.setEnabled(false);
      menu.add(none);
    }
  }

  private JMenuItem item(int number, Path file) {
    JMenuItem item = new JMenuItem(Words.of("menu.recent.file", number, file.getFileName()));
    item.setName("menu:recent." + number);
    item.setMnemonic(Character.forDigit(number, 10));
    item.setToolTipText(file.toString());
    item.setEnabled(Files.exists(file) || frame.remembered().unsaved().holds(file));
    item.addActionListener(event -> frame.openAfterAsking(file));
    return item;
  }

  private final class Filling implements MenuListener {
    @Override
    public void menuSelected(MenuEvent event) {
      fill();
    }

    @Override
    public void menuDeselected(MenuEvent event) {}

    @Override
    public void menuCanceled(MenuEvent event) {}
  }
}
