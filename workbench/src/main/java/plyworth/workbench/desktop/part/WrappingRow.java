package plyworth.workbench.desktop.part;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Insets;
import javax.swing.JPanel;

/** Parts side by side, in as many lines as the width takes, and as high as these lines are. */
final class WrappingRow extends JPanel {

  private static final long serialVersionUID = 1L;

  /**
   * A row without parts.
   *
   * @param gap between its parts
   * @param lineGap between its lines
   */
  WrappingRow(int gap, int lineGap) {
    super(new FlowLayout(FlowLayout.LEADING, gap, lineGap));
  }

  @Override
  public void setBounds(int x, int y, int width, int height) {
    boolean otherWidth = width != getWidth();
    super.setBounds(x, y, width, height);
    if (otherWidth) {
      revalidate();
    }
  }

  @Override
  public Dimension getPreferredSize() {
    Dimension oneLine = super.getPreferredSize();
    return getWidth() == 0 || getWidth() >= oneLine.width
        ? oneLine
        : new Dimension(oneLine.width, height());
  }

  /** Height of the lines that the layout will make of the parts. */
  private int height() {
    FlowLayout flow = (FlowLayout) getLayout();
    Insets insets = getInsets();
    int room = getWidth() - insets.left - insets.right - 2 * flow.getHgap();
    int height = insets.top + insets.bottom + flow.getVgap();
    int used = 0;
    int line = 0;
    for (Component part : getComponents()) {
      Dimension size = part.getPreferredSize();
      boolean next = used > 0 && used + size.width > room;
      height += next ? line + flow.getVgap() : 0;
      line = next ? size.height : Math.max(line, size.height);
      used = (next ? 0 : used) + size.width + flow.getHgap();
    }
    return height + line + flow.getVgap();
  }
}
