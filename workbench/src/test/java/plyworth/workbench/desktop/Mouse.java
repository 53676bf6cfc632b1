package plyworth.workbench.desktop;

import java.awt.Component;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.util.stream.IntStream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.ComboPopup;
import javax.swing.text.JTextComponent;

/** Works a window by the mouse alone; the keys only type words. */
final class Mouse {

  private static final int LONGEST = 200;

  private final OpenWindow window;

  Mouse(OpenWindow window) {
    this.window = window;
  }

  /** Clicks the middle of the part of that name, once it is in sight. */
  void click(String name) {
    JComponent target = Screen.get(name, JComponent.class);
    Rectangle whole = new Rectangle(target.getSize());
    Point place = reach(target, whole);
    window.hand.click(target, place.x, place.y);
  }

  /** Rolls what scrolls until the middle of an area can be clicked; says where that is. */
  private Point reach(JComponent target, Rectangle area) {
    Point middle = new Point((int) area.getCenterX(), (int) area.getCenterY());
    for (int i = 0;
        i < LONGEST && !Screen.on(() -> target.getVisibleRect().contains(middle));
        i++) {
      Component port = SwingUtilities.getAncestorOfClass(JScrollPane.class, target);
      window.hand.roll(port);
    }
    Screen.await("it is in sight", () -> target.getVisibleRect().contains(middle));
    return middle;
  }

  /** Clicks a field and types into it, in place of what stands there. */
  void write(String field, String text) {
    click(field);
    JTextComponent target = Screen.get(field, JTextComponent.class);
    Screen.await(field + " has the keyboard", target::isFocusOwner);
    window.hand.menuKey(KeyEvent.VK_A);
    window.hand.type(text);
    Screen.await("it is written", () -> target.getText().equals(text));
  }

  /** Opens a choice and clicks an entry. */
  void choose(String box, String beginning) {
    JComboBox<?> choice = Screen.get(box, JComboBox.class);
    int wanted = Screen.on(() -> Keyboard.placeOf(choice, beginning));
    click(box);
    Screen.await("the choice is open", choice::isPopupVisible);
    JList<?> list = ((ComboPopup) choice.getUI().getAccessibleChild(choice, 0)).getList();
    Screen.await("its entries are there", list::isShowing);
    clickEntry(list, wanted);
    Screen.await("it is chosen", () -> choice.getSelectedIndex() == wanted);
  }

  /** Clicks an entry of a list. */
  void clickEntry(JList<?> list, int index) {
    Point place = reach(list, Screen.on(() -> list.getCellBounds(index, index)));
    window.hand.click(list, place.x, place.y);
  }

  /** Clicks a cell of a table. */
  void clickCell(JTable table, int row, int column) {
    Point place = reach(table, Screen.on(() -> table.getCellRect(row, column, true)));
    window.hand.click(table, place.x, place.y);
  }

  /** Clicks the tab whose title begins so. */
  void turnTo(String tabs, String beginning) {
    JTabbedPane pane = Screen.get(tabs, JTabbedPane.class);
    Rectangle tab =
        Screen.on(
            () ->
                IntStream.range(0, pane.getTabCount())
                    .filter(i -> pane.getTitleAt(i).startsWith(beginning))
                    .mapToObj(pane::getBoundsAt)
                    .findFirst()
                    .orElseThrow());
    window.hand.click(pane, (int) tab.getCenterX(), (int) tab.getCenterY());
    Screen.await(
        beginning + " is in front",
        () -> pane.getTitleAt(pane.getSelectedIndex()).startsWith(beginning));
  }

  /** Opens a menu and clicks a command. */
  void command(String menu, String command) {
    click(menu);
    click("menu:" + command);
  }

  /** Drags an entry of a list onto a cell of a table, both in sight. */
  void drag(JList<?> list, int index, JTable table, int row) {
    reach(table, Screen.on(() -> table.getCellRect(row, 1, true)));
    Point from = reach(list, Screen.on(() -> list.getCellBounds(index, index)));
    Point to =
        Screen.on(
            () -> {
              Rectangle cell = table.getCellRect(row, 1, true);
              return SwingUtilities.convertPoint(
                  table, cell.x + 20, cell.y + cell.height / 2, list);
            });
    window.hand.drag(list, new Point(30, from.y), to);
  }
}
