package plyworth.workbench.desktop.part;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;

/** Parts side by side, in as many lines as it takes at the width that there is. */
public final class WrappingRow extends WidthPanel {

  private static final long serialVersionUID = 1L;

  /**
   * A row without parts.
   *
   * @param align as of {@link FlowLayout}
   * @param across gap between parts, pixels
   * @param down gap between lines, pixels
   */
  public WrappingRow(int align, int across, int down) {
    super(new Lines(align, across, down));
  }

  /** Flow that asks for the height of all its lines. */
  private static final class Lines extends FlowLayout {

    private static final long serialVersionUID = 1L;

    Lines(int align, int across, int down) {
      super(align, across, down);
    }

    @Override
    public Dimension preferredLayoutSize(Container row) {
      Dimension one = super.preferredLayoutSize(row);
      return row.getWidth() == 0 || one.width <= row.getWidth() ? one : lines(row);
    }

    @Override
    public Dimension minimumLayoutSize(Container row) {
      int widest = 0;
      for (Component part : row.getComponents()) {
        widest = Math.max(widest, part.getPreferredSize().width);
      }
      return new Dimension(widest + margin(row), preferredLayoutSize(row).height);
    }

    private int margin(Container row) {
      Insets insets = row.getInsets();
      return insets.left + insets.right + 2 * getHgap();
    }

    private Dimension lines(Container row) {
      int room = row.getWidth() - margin(row);
      int height = row.getInsets().top + row.getInsets().bottom + 2 * getVgap();
      int used = 0;
      int highest = 0;
      for (Component part : row.getComponents()) {
        Dimension wanted = part.getPreferredSize();
        if (used > 0 && used + getHgap() + wanted.width > room) {
          height += highest + getVgap();
          used = 0;
          highest = 0;
        }
        used += (used > 0 ? getHgap() : 0) + wanted.width;
        highest = Math.max(highest, wanted.height);
      }
      return new Dimension(row.getWidth(), height + highest);
    }
  }
}
