package plyworth.workbench.desktop;

/** Puts plain text into the markup that Swing labels and panes read. */
final class Html {

  private Html() {}

  static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
