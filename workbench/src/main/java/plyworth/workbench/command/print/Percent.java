package plyworth.workbench.command.print;

import picocli.CommandLine.TypeConversionException;
import plyworth.workbench.host.Digits;

/**
 * A share as people write it, in per cent.
 *
 * @param share 0.01 for 1 %
 */
public record Percent(double share) {

  /** Reads {@code 0.5%}, {@code 0.5 %} or {@code 0.5}. */
  public static Percent read(String text) {
    try {
      return new Percent(Double.parseDouble(text.replaceFirst("\\s*%$", "")) / 100);
    } catch (NumberFormatException e) {
      throw new TypeConversionException("write a share such as 0.5%, not \"" + text + "\"");
    }
  }

  @Override
  public String toString() {
    return Digits.sensible(100 * share) + " %";
  }
}
