package plyworth.workbench.chart;

/** Puts plain text into the markup that Swing labels, panes and tooltips read. */
public final class Html {

  private Html() {}

  /** The text with every sign escaped that the markup would take for its own. */
  public static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
