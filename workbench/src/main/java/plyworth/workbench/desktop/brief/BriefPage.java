package plyworth.workbench.desktop.brief;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import java.util.ArrayList;
import java.util.List;
import plyworth.workbench.desktop.part.ScrollingPanel;

/**
 * Rows of the form one below the other: names at the left, inputs beside, and what is said of each
 * in lines of the width that is left; below all of them what goes with the page.
 */
final class BriefPage extends ScrollingPanel {

  private static final long serialVersionUID = 1L;
  private static final int NAMES = 210;
  private static final int INPUTS = 360;
  private static final int GAP = 10;
  private static final int NARROW = 180;

  private final transient List<BriefRow> rows = new ArrayList<>();

  BriefPage() {
    super(new Rows());
  }

  void add(BriefRow row) {
    rows.add(row);
    add(row.label());
    add(row.input().component());
    add(row.note());
  }

  /** Three columns, and below them the rest. */
  private static final class Rows implements LayoutManager {

    @Override
    public void addLayoutComponent(String name, Component part) {}

    @Override
    public void removeLayoutComponent(Component part) {}

    @Override
    public Dimension preferredLayoutSize(Container parent) {
      return new Dimension(
          UIScale.scale(NAMES) + UIScale.scale(INPUTS) + UIScale.scale(NARROW) + 4 * GAP,
          lay((BriefPage) parent, false));
    }

    @Override
    public Dimension minimumLayoutSize(Container parent) {
      return new Dimension(UIScale.scale(NAMES) + UIScale.scale(INPUTS) + UIScale.scale(NARROW), 0);
    }

    @Override
    public void layoutContainer(Container parent) {
      lay((BriefPage) parent, true);
    }

    /** Puts the parts in place, or only says how high they are together. */
    private static int lay(BriefPage page, boolean place) {
      Insets insets = page.getInsets();
      int noteX = insets.left + UIScale.scale(NAMES) + UIScale.scale(INPUTS) + 2 * GAP;
      int noteWidth = Math.max(UIScale.scale(NARROW), page.getWidth() - noteX - GAP);
      int y = insets.top + GAP;
      for (BriefRow row : page.rows) {
        if (row.label().isVisible()) {
          y += lay(row, insets.left, y, noteX, noteWidth, place) + GAP;
        }
      }
      for (int i = 3 * page.rows.size(); i < page.getComponentCount(); i++) {
        Component rest = page.getComponent(i);
        int height = rest.getPreferredSize().height;
        if (place) {
          rest.setBounds(insets.left, y, noteX + noteWidth - insets.left, height);
        }
        y += height + GAP;
      }
      return y + insets.bottom;
    }

    private static int lay(BriefRow row, int x, int y, int noteX, int noteWidth, boolean place) {
      Component input = row.input().component();
      int height = input.getPreferredSize().height;
      row.note().setSize(noteWidth, Short.MAX_VALUE);
      int noteHeight = row.note().getPreferredSize().height;
      int line = row.label().getPreferredSize().height;
      int down = Math.max(0, (Math.min(height, UIScale.scale(32)) - line) / 2);
      if (place) {
        row.label().setBounds(x, y + down, UIScale.scale(NAMES), line);
        input.setBounds(x + UIScale.scale(NAMES) + GAP, y, UIScale.scale(INPUTS), height);
        row.note().setBounds(noteX, y + down, noteWidth, noteHeight);
      }
      return Math.max(height, noteHeight + down);
    }
  }
}
