package plyworth.workbench.host;

/** How units in plain spelling are written for people. */
public final class UnitText {

  private UnitText() {}

  /** The unit with its proper signs, {@code cm³/(m²·day·bar)}; empty for a pure number. */
  public static String of(String plain) {
    if (plain.equals("1")) {
      return "";
    }
    return plain
        .replaceAll("(?<=[a-z])2(?![0-9])", "²")
        .replaceAll("(?<=[a-z])3(?![0-9])", "³")
        .replaceAll("\\bum\\b", "µm")
        .replaceAll("\\bdeg(?=[CF]\\b)", "°")
        .replaceAll("(?<=[\\p{L}²³])\\.(?=\\p{L})", "·");
  }
}
