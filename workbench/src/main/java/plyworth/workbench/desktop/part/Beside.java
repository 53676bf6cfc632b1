package plyworth.workbench.desktop.part;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Insets;
import javax.swing.JComponent;

/** A part that takes the width there is, and one beside it; below it where that is too little. */
public final class Beside extends WidthPanel {

  private static final long serialVersionUID = 1L;
  private static final int GAP = 6;

  private final JComponent wide;
  private final JComponent other;

  /**
   * Two parts.
   *
   * @param wide takes what width the other leaves, and no less than it would like
   */
  public Beside(JComponent wide, JComponent other) {
    super(null);
    this.wide = wide;
    this.other = other;
    add(wide);
    add(other);
  }

  private boolean below() {
    Insets insets = getInsets();
    int room = getWidth() - insets.left - insets.right;
    return getWidth() > 0 && room < width(wide) + GAP + width(other);
  }

  private static int width(Component part) {
    return part.getPreferredSize().width;
  }

  private static int height(Component part) {
    return part.getPreferredSize().height;
  }

  @Override
  public Dimension getPreferredSize() {
    Insets insets = getInsets();
    int height =
        below() ? height(wide) + GAP + height(other) : Math.max(height(wide), height(other));
    return new Dimension(
        width(wide) + GAP + width(other) + insets.left + insets.right,
        height + insets.top + insets.bottom);
  }

  @Override
  public Dimension getMinimumSize() {
    return new Dimension(0, getPreferredSize().height);
  }

  @Override
  public void doLayout() {
    Insets insets = getInsets();
    int room = getWidth() - insets.left - insets.right;
    int first = Math.max(height(wide), below() ? 0 : height(other));
    if (below()) {
      wide.setBounds(insets.left, insets.top, room, first);
      other.setBounds(
          insets.left, insets.top + first + GAP, Math.min(room, width(other)), height(other));
    } else {
      int beside = width(other);
      wide.setBounds(insets.left, insets.top, room - beside - GAP, first);
      other.setBounds(insets.left + room - beside, insets.top, beside, first);
    }
  }
}
