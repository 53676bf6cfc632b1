package plyworth.workbench.desktop.part;

import javax.swing.BorderFactory;
import javax.swing.JEditorPane;
import javax.swing.text.DefaultCaret;

/** A page of text to read, that can be copied from and has no cursor. */
public final class Page extends JEditorPane {

  private static final long serialVersionUID = 1L;

  /** An empty page. */
  public Page(String name, String accessibleName) {
    super("text/html", "");
    setName(name);
    setEditable(false);
    FileDrop.onto(this);
    putClientProperty(HONOR_DISPLAY_PROPERTIES, true);
    setBorder(BorderFactory.createEmptyBorder(6, 12, 10, 12));
    getAccessibleContext().setAccessibleName(accessibleName);
    setCaret(
        new DefaultCaret() {
          private static final long serialVersionUID = 1L;

          @Override
          public void setVisible(boolean visible) {
            super.setVisible(false);
          }
        });
  }

  /** Shows a page from its beginning. */
  public void show(String html) {
    setText(html);
    setCaretPosition(0);
  }
}
