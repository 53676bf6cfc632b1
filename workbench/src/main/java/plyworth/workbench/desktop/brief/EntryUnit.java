package plyworth.workbench.desktop.brief;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import plyworth.workbench.desktop.word.Words;

/**
 * A unit that may be typed after a figure. What is typed is multiplied, divided and shifted as a
 * decimal number, so that a figure that was written comes back to the last digit.
 *
 * @param symbol how it is written on screen; empty for a bare figure
 * @param factor times which the figure is taken
 * @param divisor by which it is divided then
 * @param offset what is added then
 * @param spellings what else may be typed, in lower case
 */
record EntryUnit(
    String symbol,
    BigDecimal factor,
    BigDecimal divisor,
    BigDecimal offset,
    List<String> spellings) {

  /** Units that are words, which every language has its own for. */
  private static final Set<String> WORDS =
      Set.of("days", "weeks", "months", "years", "packs", "thousand", "million");

  /** The inside unit itself. */
  static EntryUnit inside(String symbol, String... spellings) {
    return times(symbol, "1", spellings);
  }

  /** A unit of so many inside units. */
  static EntryUnit times(String symbol, String factor, String... spellings) {
    return ratio(symbol, factor, "1", "0", spellings);
  }

  /** A unit whose figure, times a factor, over a divisor and shifted, is the inside figure. */
  static EntryUnit ratio(
      String symbol, String factor, String divisor, String offset, String... spellings) {
    return new EntryUnit(
        symbol,
        new BigDecimal(factor),
        new BigDecimal(divisor),
        new BigDecimal(offset),
        Arrays.asList(spellings));
  }

  /** How it is written on screen in the language in force. */
  String shown() {
    return WORDS.contains(symbol) ? Words.of("unit." + symbol) : symbol;
  }

  /** Whether a text names this unit, in whatever language, raised or full-width characters. */
  boolean named(String text) {
    String wanted = plain(text);
    return wanted.equals(plain(symbol))
        || wanted.equals(plain(shown()))
        || spellings.stream().map(EntryUnit::plain).anyMatch(wanted::equals);
  }

  private static String plain(String text) {
    return Normalizer.normalize(text.strip(), Normalizer.Form.NFKC)
        .toLowerCase(Locale.ROOT)
        .replaceAll("\\s+", " ");
  }

  /** The figure in the inside unit. */
  double toInside(BigDecimal number) {
    return number
        .multiply(factor)
        .divide(divisor, MathContext.DECIMAL128)
        .add(offset)
        .doubleValue();
  }

  /** The figure of an inside figure, in this unit. */
  BigDecimal fromInside(double figure) {
    return BigDecimal.valueOf(figure)
        .subtract(offset)
        .multiply(divisor)
        .divide(factor, MathContext.DECIMAL128);
  }
}
