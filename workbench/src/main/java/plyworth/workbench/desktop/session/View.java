package plyworth.workbench.desktop.session;

import javax.swing.JComponent;

/** A part of the window that shows the session. */
public interface View {

  /** What is put into the window. */
  JComponent component();

  /** Shows the session as it is now. */
  void show(Session session);
}
