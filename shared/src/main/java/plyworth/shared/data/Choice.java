package plyworth.shared.data;

import java.util.Locale;

/** How the constants of an enum are written in files: lower case with hyphens. */
public final class Choice {

  private Choice() {}

  /** The file spelling of a constant, for example {@code bright-out} for {@code BRIGHT_OUT}. */
  public static String plain(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
