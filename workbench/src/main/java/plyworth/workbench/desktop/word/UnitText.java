package plyworth.workbench.desktop.word;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** How units are written on screen: with raised digits, raised dots and the sign for micro. */
public final class UnitText {

  private static final Pattern MICRO = Pattern.compile("\\bum\\b");
  private static final Pattern SQUARE = Pattern.compile("(\\b|\\d)m2\\b");
  private static final Pattern CUBE = Pattern.compile("\\b(c?)m3\\b");
  private static final Pattern TIMES = Pattern.compile("(?<=[\\p{L}²³])\\.(?=\\p{L})");

  private static final Pattern COUNTED = Pattern.compile("\\b(?:days|packs|pack)\\b");

  private UnitText() {}

  /** A unit, or a text with units in it, spelled for people. */
  public static String of(String text) {
    String micro = MICRO.matcher(text).replaceAll("µm");
    String square = SQUARE.matcher(micro).replaceAll("$1m²");
    String shown = TIMES.matcher(CUBE.matcher(square).replaceAll("$1m³")).replaceAll("·");
    return shown.contains(" ") ? shown : COUNTED.matcher(shown).replaceAll(UnitText::counted);
  }

  /** What is counted has a name in each language, unlike what has a symbol. */
  private static String counted(MatchResult name) {
    return Words.of("unit." + name.group());
  }
}
