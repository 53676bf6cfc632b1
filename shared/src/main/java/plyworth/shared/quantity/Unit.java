package plyworth.shared.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Units that people type and read, each with its exact factor to the unit used inside.
 *
 * <p>Factors follow from the international inch (25.4 mm), pound (0.453 592 37 kg) and standard
 * atmosphere (1.013 25 bar), unless a unit says otherwise.
 */
public enum Unit {
  /** Micrometre, the inside unit of gauge. */
  UM(Kind.GAUGE, "µm", 1, "um"),
  /** Nanometre, for vapour-deposited metal. */
  NM(Kind.GAUGE, "nm", 1e-3),
  /** Thousandth of an inch. */
  MIL(Kind.GAUGE, "mil", 25.4),
  /** Hundredth of a mil. */
  HUNDREDTH_MIL(Kind.GAUGE, "ga", 0.254, "gauge"),
  /** Gram per square metre, the inside unit of grammage. */
  GSM(Kind.GRAMMAGE, "g/m²", 1, "g/m2", "gsm"),
  /** Pound per ream of 3000 square feet. */
  LB_PER_3000FT2(Kind.GRAMMAGE, "lb/3000ft²", 453.59237 / (3000 * 0.09290304), "lb/3000ft2"),
  /** Inside unit of an oxygen transmission rate; per bar of oxygen pressure difference. */
  O2_RATE(Kind.OXYGEN_RATE, "cm³/(m²·day·bar)", 1, "cm3/(m2.day.bar)"),
  /** Oxygen transmission rate per 100 square inches and atmosphere. */
  O2_RATE_US(
      Kind.OXYGEN_RATE, "cm³/(100in²·day·atm)", 1 / 0.064516 / 1.01325, "cm3/(100in2.day.atm)"),
  /** Inside unit of a water-vapour transmission rate. */
  WV_RATE(Kind.VAPOUR_RATE, "g/(m²·day)", 1, "g/(m2.day)"),
  /** Water-vapour transmission rate per 100 square inches. */
  WV_RATE_US(Kind.VAPOUR_RATE, "g/(100in²·day)", 1 / 0.064516, "g/(100in2.day)"),
  /** Inside unit of oxygen permeability. */
  O2_PERMEABILITY(Kind.OXYGEN_PERMEABILITY, "cm³·µm/(m²·day·bar)", 1, "cm3.um/(m2.day.bar)"),
  /** Oxygen permeability per mil, 100 square inches and atmosphere. */
  O2_PERMEABILITY_US(
      Kind.OXYGEN_PERMEABILITY,
      "cm³·mil/(100in²·day·atm)",
      25.4 / 0.064516 / 1.01325,
      "cm3.mil/(100in2.day.atm)"),
  /**
   * 10⁻¹⁰ cm³(STP)·cm/(cm²·s·cmHg), as research on membranes and polymers quotes oxygen; a
   * millimetre of mercury is 133.322 387 415 Pa.
   */
  BARRER(
      Kind.OXYGEN_PERMEABILITY,
      "Barrer",
      1e-10 * 1e4 * 1e4 * 86_400 * 1e5 / 1333.22387415,
      "barrer"),
  /** Mass of oxygen in SI units, without prefixes: 22 413.97 cm³(STP) per mole of 31.998 g. */
  O2_PERMEABILITY_SI(
      Kind.OXYGEN_PERMEABILITY,
      "kg·m/(m²·s·Pa)",
      22_413.97 / 31.998e-3 * 1e6 * 86_400 * 1e5,
      "kg.m/(m2.s.pa)"),
  /** Inside unit of water-vapour permeability at a stated climate. */
  WV_PERMEABILITY(Kind.VAPOUR_PERMEABILITY, "g·µm/(m²·day)", 1, "g.um/(m2.day)"),
  /** Water-vapour permeability per mil and 100 square inches. */
  WV_PERMEABILITY_US(
      Kind.VAPOUR_PERMEABILITY, "g·mil/(100in²·day)", 25.4 / 0.064516, "g.mil/(100in2.day)"),
  /** Inside unit of water-vapour permeance, per pascal of vapour pressure difference. */
  WV_PERMEANCE(Kind.VAPOUR_PERMEANCE, "g/(m²·day·Pa)", 1, "g/(m2.day.pa)"),
  /**
   * Grain per square foot, hour and inch of mercury at 0 °C: a grain is 64.798 91 mg, an inch of
   * mercury 3386.389 Pa.
   */
  PERM_US(Kind.VAPOUR_PERMEANCE, "perm (US)", 0.06479891 * 24 / 0.09290304 / 3386.389, "perm");

  /** What a unit measures; only units of one kind convert into each other. */
  public enum Kind {
    /** Layer gauge; inside µm. */
    GAUGE,
    /** Mass per area; inside g/m². */
    GRAMMAGE,
    /** Oxygen transmission rate; inside cm³(STP)/(m²·day·bar). */
    OXYGEN_RATE,
    /** Water-vapour transmission rate; inside g/(m²·day). */
    VAPOUR_RATE,
    /** Oxygen permeability; inside cm³(STP)·µm/(m²·day·bar). */
    OXYGEN_PERMEABILITY,
    /** Water-vapour permeability at a stated climate; inside g·µm/(m²·day). */
    VAPOUR_PERMEABILITY,
    /** Water-vapour permeance; inside g/(m²·day·Pa). */
    VAPOUR_PERMEANCE
  }

  private final Kind kind;
  private final String symbol;
  private final double factor;
  private final List<String> spellings;

  Unit(Kind kind, String symbol, double factor, String... spellings) {
    this.kind = kind;
    this.symbol = symbol;
    this.factor = factor;
    this.spellings = List.of(spellings);
  }

  /** What this unit measures. */
  public Kind kind() {
    return kind;
  }

  /** How the unit is written on screens. */
  public String symbol() {
    return symbol;
  }

  /** The spelling in plain ASCII, used in files and on the command line. */
  public String plain() {
    return spellings.isEmpty() ? symbol : spellings.get(0);
  }

  /** Converts a number of this unit to the inside unit of its kind. */
  public double toInside(double number) {
    return number * factor;
  }

  /** Converts a figure in the inside unit of this kind to a number of this unit. */
  public double fromInside(double figure) {
    return figure / factor;
  }

  /** The unit written as {@code text}, symbol or plain spelling; empty when there is none. */
  public static Optional<Unit> named(String text) {
    String wanted = text.strip().replace('μ', 'µ').toLowerCase(Locale.ROOT);
    return Arrays.stream(values())
        .filter(u -> u.symbol.equalsIgnoreCase(wanted) || u.spellings.contains(wanted))
        .findFirst();
  }
}
