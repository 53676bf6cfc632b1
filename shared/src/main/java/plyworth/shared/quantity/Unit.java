package plyworth.shared.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Units that people type and read, each with its exact factor to the unit used inside.
 *
 * <p>Factors follow from the international inch (25.4 mm), pound (0.453 592 37 kg) and standard
 * atmosphere (1.013 25 bar), the pound-force of standard gravity (9.806 65 m/s²) and the British
 * thermal unit of the International Table (1055.055 852 62 J), all from memory, unless a unit says
 * otherwise.
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
  PERM_US(Kind.VAPOUR_PERMEANCE, "perm (US)", 0.06479891 * 24 / 0.09290304 / 3386.389, "perm"),
  /** Water-vapour or alcohol permeability per millimetre. */
  PERMEABILITY_PER_MM(Kind.VAPOUR_PERMEABILITY, "g·mm/(m²·day)", 1000, "g.mm/(m2.day)"),
  /** Inside unit of price. */
  PRICE(Kind.PRICE, "EUR/kg", 1),
  /** Price per pound. */
  PRICE_US(Kind.PRICE, "EUR/lb", 1 / 0.45359237),
  /** Inside unit of density. */
  DENSITY(Kind.DENSITY, "kg/m³", 1, "kg/m3"),
  /** Gram per cubic centimetre. */
  DENSITY_CGS(Kind.DENSITY, "g/cm³", 1000, "g/cm3"),
  /** Pound per cubic foot. */
  DENSITY_US(Kind.DENSITY, "lb/ft³", 0.45359237 / 0.028316846592, "lb/ft3"),
  /** Inside unit of modulus and strength. */
  STRESS(Kind.STRESS, "MPa", 1),
  /** Pound-force per square inch. */
  STRESS_US(Kind.STRESS, "psi", 4.4482216152605 / 645.16),
  /** Inside unit of seal strength and hot tack, on a strip of 15 mm. */
  SEAL_FORCE(Kind.SEAL_FORCE, "N/15mm", 1, "N/15 mm"),
  /** Pound-force per inch of seal. */
  SEAL_FORCE_US(Kind.SEAL_FORCE, "lbf/in", 4.4482216152605 * 15 / 25.4),
  /** Inside unit of temperature. */
  CELSIUS(Kind.TEMPERATURE, "°C", 1, "degC"),
  /** Degree Fahrenheit. */
  FAHRENHEIT(Kind.TEMPERATURE, "°F", 1 / 1.8, "degF"),
  /** Inside unit of thermal conductivity. */
  CONDUCTIVITY(Kind.CONDUCTIVITY, "W/(m·K)", 1, "W/(m.K)"),
  /** Thermal conductivity per inch, hour, square foot and degree Fahrenheit. */
  CONDUCTIVITY_US(
      Kind.CONDUCTIVITY,
      "BTU·in/(h·ft²·°F)",
      1055.05585262 * 0.0254 * 1.8 / (3600 * 0.09290304),
      "BTU.in/(h.ft2.degF)"),
  /** Inside unit of specific heat capacity. */
  HEAT_CAPACITY(Kind.HEAT_CAPACITY, "J/(kg·K)", 1, "J/(kg.K)"),
  /** Specific heat capacity per pound and degree Fahrenheit. */
  HEAT_CAPACITY_US(Kind.HEAT_CAPACITY, "BTU/(lb·°F)", 4186.8, "BTU/(lb.degF)"),
  /** Inside unit of thermal expansion. */
  EXPANSION(Kind.EXPANSION, "10⁻⁶/K", 1, "1e-6/K"),
  /** Thermal expansion per degree Fahrenheit. */
  EXPANSION_US(Kind.EXPANSION, "10⁻⁶/°F", 1.8, "1e-6/degF"),
  /** Inside unit of surface energy. */
  SURFACE_ENERGY(Kind.SURFACE_ENERGY, "mN/m", 1),
  /** The same number in dyne per centimetre. */
  SURFACE_ENERGY_CGS(Kind.SURFACE_ENERGY, "dyn/cm", 1);

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
    VAPOUR_PERMEANCE,
    /** Price by mass; inside EUR/kg. */
    PRICE,
    /** Density; inside kg/m³. */
    DENSITY,
    /** Modulus or strength; inside MPa. */
    STRESS,
    /** Force across a seal; inside N on a strip of 15 mm. */
    SEAL_FORCE,
    /** Temperature; inside °C. */
    TEMPERATURE,
    /** Thermal conductivity; inside W/(m·K). */
    CONDUCTIVITY,
    /** Specific heat capacity; inside J/(kg·K). */
    HEAT_CAPACITY,
    /** Linear thermal expansion; inside 10⁻⁶/K. */
    EXPANSION,
    /** Surface energy; inside mN/m. */
    SURFACE_ENERGY
  }

  private static final double FREEZING_IN_FAHRENHEIT = 32;

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
    return (number - zero()) * factor;
  }

  /** Converts a figure in the inside unit of this kind to a number of this unit. */
  public double fromInside(double figure) {
    return figure / factor + zero();
  }

  /** What the number is where the figure inside is zero. */
  private double zero() {
    return this == FAHRENHEIT ? FREEZING_IN_FAHRENHEIT : 0;
  }

  /**
   * Converts a number of this unit to a number of another of the same kind.
   *
   * @throws IllegalArgumentException when the other measures something else
   */
  public double to(Unit other, double number) {
    if (other.kind != kind) {
      throw new IllegalArgumentException(symbol + " does not convert into " + other.symbol);
    }
    return other == this ? number : other.fromInside(toInside(number));
  }

  /** The unit in which trade in US customary units states what this one measures. */
  public Unit customary() {
    return switch (kind) {
      case GAUGE -> MIL;
      case GRAMMAGE -> LB_PER_3000FT2;
      case OXYGEN_RATE -> O2_RATE_US;
      case VAPOUR_RATE -> WV_RATE_US;
      case OXYGEN_PERMEABILITY -> O2_PERMEABILITY_US;
      case VAPOUR_PERMEABILITY -> WV_PERMEABILITY_US;
      case VAPOUR_PERMEANCE -> PERM_US;
      case PRICE -> PRICE_US;
      case DENSITY -> DENSITY_US;
      case STRESS -> STRESS_US;
      case SEAL_FORCE -> SEAL_FORCE_US;
      case TEMPERATURE -> FAHRENHEIT;
      case CONDUCTIVITY -> CONDUCTIVITY_US;
      case HEAT_CAPACITY -> HEAT_CAPACITY_US;
      case EXPANSION -> EXPANSION_US;
      case SURFACE_ENERGY -> SURFACE_ENERGY_CGS;
    };
  }

  /** The units that measure the same, in the order of this list. */
  public List<Unit> alike() {
    return Arrays.stream(values()).filter(unit -> unit.kind == kind).toList();
  }

  /** The unit written as {@code text}, symbol or plain spelling; empty when there is none. */
  public static Optional<Unit> named(String text) {
    String wanted = text.strip().replace('μ', 'µ');
    return Arrays.stream(values()).filter(u -> u.isWritten(wanted)).findFirst();
  }

  private boolean isWritten(String text) {
    return symbol.equalsIgnoreCase(text) || spellings.stream().anyMatch(text::equalsIgnoreCase);
  }
}
