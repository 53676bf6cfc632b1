package plyworth.workbench.desktop.part;

import java.awt.LayoutManager;
import javax.swing.JPanel;

/** A panel that is as high as its width makes it: another width lays it out anew. */
abstract class WidthPanel extends JPanel {

  private static final long serialVersionUID = 1L;

  /** An empty panel. */
  WidthPanel(LayoutManager layout) {
    super(layout);
  }

  @Override
  public final void setBounds(int x, int y, int width, int height) {
    boolean otherWidth = width != getWidth();
    super.setBounds(x, y, width, height);
    if (otherWidth) {
      revalidate();
    }
  }
}
