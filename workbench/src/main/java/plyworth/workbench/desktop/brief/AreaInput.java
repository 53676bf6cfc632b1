package plyworth.workbench.desktop.brief;

import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Typed;

/** Lines of words or figures; Tab leaves it. */
final class AreaInput implements BriefInput {

  private final JTextArea area;
  private final JScrollPane scroll;

  AreaInput(int rows, Runnable changed) {
    area = new JTextArea(rows, 0);
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    Keys.leaveByTab(area);
    Typed.into(area, changed);
    scroll = new JScrollPane(area);
    scroll.setVerticalScrollBarPolicy(JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED);
    scroll.setMinimumSize(scroll.getPreferredSize());
  }

  @Override
  public JComponent component() {
    return scroll;
  }

  @Override
  public JComponent target() {
    return area;
  }

  @Override
  public String text() {
    return area.getText();
  }

  @Override
  public void show(String text) {
    area.setText(text);
    area.setCaretPosition(0);
  }
}
