package plyworth.workbench.desktop;

import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;

/** A part of the window that is drawn by hand, and can be read by those who do not see it. */
abstract class Drawing extends JComponent {

  private static final long serialVersionUID = 1L;

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            private static final long serialVersionUID = 1L;
          };
    }
    return accessibleContext;
  }
}
