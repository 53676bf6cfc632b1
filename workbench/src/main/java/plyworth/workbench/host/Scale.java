package plyworth.workbench.host;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import plyworth.shared.quantity.Unit;

/**
 * How figures of one unit are typed and read: in the unit in which they are kept, or in another
 * that measures the same.
 *
 * @param kept the unit in which they are kept, in plain spelling
 * @param shown the unit in which they are typed and read; empty where {@code kept} converts into no
 *     other
 */
public record Scale(String kept, Optional<Unit> shown) {

  private static final MathContext CONVERTED = new MathContext(7);

  /** What was typed: a figure in the unit that is kept, or why it is none. */
  public record Reading(double figure, Trouble trouble) {

    /** Whether it is a figure. */
    public boolean good() {
      return trouble == Trouble.NONE;
    }
  }

  /** Why something typed is no figure. */
  public enum Trouble {
    /** It is one. */
    NONE,
    /** Nothing was typed. */
    EMPTY,
    /** It does not begin with a number, or the number is not finite. */
    NO_NUMBER,
    /** The unit behind the number measures something else, or is none. */
    OTHER_UNIT
  }

  /**
   * A scale.
   *
   * @param kept the unit in which figures are kept, in plain spelling
   * @param customary whether they are shown in US customary units where there is one
   */
  public static Scale of(String kept, boolean customary) {
    return new Scale(kept, Unit.named(kept).map(unit -> customary ? unit.customary() : unit));
  }

  /** The unit that is shown, for people; empty for a pure number. */
  public String symbol() {
    return shown.map(Unit::symbol).orElseGet(() -> UnitText.of(kept));
  }

  /** The units that may stand behind a number, for people. */
  public List<String> symbols() {
    return shown
        .map(unit -> unit.alike().stream().map(Unit::symbol).toList())
        .orElseGet(() -> List.of(symbol()));
  }

  /** A figure that is kept, in the unit that is shown. */
  public double shown(double figure) {
    return Unit.named(kept).isPresent() && shown.isPresent()
        ? Unit.named(kept).get().to(shown.get(), figure)
        : figure;
  }

  /**
   * A figure as it stands in a field: every digit where it is shown as it is kept, seven where it
   * was converted; empty for the unknown.
   */
  public String typed(double figure) {
    if (Double.isNaN(figure)) {
      return "";
    }
    double number = shown(figure);
    if (Double.isInfinite(number)) {
      return Digits.sensible(number);
    }
    BigDecimal exact = BigDecimal.valueOf(number);
    BigDecimal written = number == figure ? exact : exact.round(CONVERTED);
    return written.signum() == 0 ? "0" : plain(written.stripTrailingZeros());
  }

  /** With an exponent only where zeros would have to be counted. */
  private static String plain(BigDecimal number) {
    double size = Math.abs(number.doubleValue());
    return size >= 1e-6 && size < 1e12 ? number.toPlainString() : number.toString();
  }

  /** Reads a number in the unit that is shown, or with any unit that measures the same. */
  public Reading read(String text) {
    String stripped = text.strip();
    if (stripped.isEmpty()) {
      return new Reading(Double.NaN, Trouble.EMPTY);
    }
    String[] parts = stripped.split("\\s+", 2);
    Optional<Double> number = number(parts[0]);
    if (number.isEmpty()) {
      return new Reading(Double.NaN, Trouble.NO_NUMBER);
    }
    return parts.length == 1 || parts[1].equals(symbol())
        ? new Reading(shown.map(u -> inside(u, number.get())).orElse(number.get()), Trouble.NONE)
        : inUnit(number.get(), parts[1]);
  }

  private Reading inUnit(double number, String unit) {
    if (unit.equals(kept) || unit.equals(UnitText.of(kept))) {
      return new Reading(number, Trouble.NONE);
    }
    return shown
        .flatMap(
            mine ->
                mine.alike().stream()
                    .filter(u -> Unit.named(unit).equals(Optional.of(u)))
                    .findFirst())
        .map(typed -> new Reading(inside(typed, number), Trouble.NONE))
        .orElse(new Reading(Double.NaN, Trouble.OTHER_UNIT));
  }

  private double inside(Unit typed, double number) {
    return typed.to(Unit.named(kept).orElseThrow(), number);
  }

  private static Optional<Double> number(String text) {
    try {
      double number = Double.parseDouble(text);
      boolean plain = text.matches("[-+]?[0-9.]+([eE][-+]?[0-9]+)?");
      return plain && Double.isFinite(number) ? Optional.of(number) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }
}
