package plyworth.workbench.desktop.part;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import javax.swing.text.DefaultCaret;

/**
 * Parts one below the other, all as wide as the panel, texts broken into lines of that width; a
 * scroll pane around it scrolls up and down alone.
 */
public final class StackPanel extends ScrollingPanel {

  private static final long serialVersionUID = 1L;
  private static final int NARROW = 100;

  /** Lines are broken at whole pixels, and may come out this much longer where one is several. */
  private static final int ROOM = 8;

  /** A panel without parts. */
  public StackPanel() {
    super(new Stack());
  }

  /** Words that fill the width and break into lines. */
  public static JTextArea words(String text, int style) {
    JTextArea words = new JTextArea();
    DefaultCaret still = new DefaultCaret();
    still.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
    words.setCaret(still);
    words.setText(text);
    words.setLineWrap(true);
    words.setWrapStyleWord(true);
    words.setEditable(false);
    words.setFocusable(false);
    words.setOpaque(false);
    words.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, ROOM));
    FileDrop.onto(words);
    words.setFont(UIManager.getFont("Label.font").deriveFont(style));
    return words;
  }

  /** A note above or below a table, with room around it. */
  public static StackPanel note(JTextArea words) {
    StackPanel note = new StackPanel();
    note.setBorder(BorderFactory.createEmptyBorder(8, 10, 8, 10));
    note.add(words);
    return note;
  }

  /** One below the other. */
  private static final class Stack implements LayoutManager {

    @Override
    public void addLayoutComponent(String name, Component part) {}

    @Override
    public void removeLayoutComponent(Component part) {}

    @Override
    public Dimension preferredLayoutSize(Container parent) {
      Insets insets = parent.getInsets();
      int width = Math.max(NARROW, parent.getWidth()) - insets.left - insets.right;
      int height = insets.top + insets.bottom;
      for (Component part : parent.getComponents()) {
        height += part.isVisible() ? height(part, width) : 0;
      }
      return new Dimension(width + insets.left + insets.right, height);
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
      return new Dimension(NARROW, 0);
    }

    @Override
    public void layoutContainer(Container parent) {
      Insets insets = parent.getInsets();
      int width = parent.getWidth() - insets.left - insets.right;
      int y = insets.top;
      for (Component part : parent.getComponents()) {
        if (part.isVisible()) {
          int height = height(part, width);
          part.setBounds(insets.left, y, width, height);
          y += height;
        }
      }
    }

    private static int height(Component part, int width) {
      if (part instanceof JTextArea) {
        part.setSize(width, Short.MAX_VALUE);
      }
      return part.getPreferredSize().height;
    }
  }
}
