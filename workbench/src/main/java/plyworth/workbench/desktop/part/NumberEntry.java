package plyworth.workbench.desktop.part;

import java.math.BigDecimal;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** Numbers as people type them. */
public final class NumberEntry {

  private NumberEntry() {}

  /** The number; empty when it is none. */
  public static OptionalDouble of(String text) {
    try {
      return OptionalDouble.of(new BigDecimal(plain(text)).doubleValue());
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  /** The whole number; empty when it is none. */
  public static OptionalInt whole(String text) {
    try {
      return OptionalInt.of(Integer.parseInt(plain(text)));
    } catch (NumberFormatException e) {
      return OptionalInt.empty();
    }
  }

  /** A number as it would be typed, with all its digits. */
  public static String text(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  /** Figures are often grouped by spaces. */
  private static String plain(String text) {
    return text.replaceAll("[\\s\u00a0\u202f]", "");
  }
}
