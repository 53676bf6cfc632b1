package plyworth.workbench.desktop.part;

/** How large everything in the window is, for displays and eyes that need it larger. */
public enum TextSize {
  /** As large as the look and feel has it. */
  NORMAL(100),
  /** A quarter larger. */
  LARGE(125),
  /** Half as large again. */
  LARGER(150),
  /** Twice as large. */
  DOUBLE(200);

  private static TextSize inForce = NORMAL;

  private final int percent;

  TextSize(int percent) {
    this.percent = percent;
  }

  /** The size that appearances are put on in. */
  public static TextSize inForce() {
    return inForce;
  }

  /** Lets the next appearance be of this size. */
  public void take() {
    inForce = this;
  }

  /** The font that everything is measured by, as the look and feel reads it. */
  public String font() {
    return percent + "%";
  }
}
