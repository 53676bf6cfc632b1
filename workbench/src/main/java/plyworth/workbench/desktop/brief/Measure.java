package plyworth.workbench.desktop.brief;

import static plyworth.workbench.desktop.brief.EntryUnit.inside;
import static plyworth.workbench.desktop.brief.EntryUnit.ratio;
import static plyworth.workbench.desktop.brief.EntryUnit.times;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/**
 * What a figure in a form measures, with the units it may be typed in; a figure without a unit is
 * in the first, which is the inside unit or, for shares, per cent.
 *
 * <p>US customary units follow from the international inch (25.4 mm) and pound (453.592 37 g), the
 * US gallon of 231 cubic inches and the degree Fahrenheit of 5/9 K; a thermal unit per hour, square
 * foot and degree is 5.678 263 W/(m²·K) (from memory). A month is a twelfth of 365 days.
 */
public enum Measure {
  /** A bare figure. */
  PLAIN(inside("")),
  /** Length; inside mm. */
  LENGTH(inside("mm"), times("cm", "10"), times("in", "25.4", "inch", "inches", "\"")),
  /** Mass; inside g. */
  MASS(
      inside("g"),
      times("kg", "1000"),
      times("oz", "28.349523125"),
      times("lb", "453.59237", "lbs")),
  /** Volume; inside cm³. */
  VOLUME(
      inside("cm³", "cm3", "ml", "cc"),
      times("in³", "16.387064", "in3", "cu in"),
      times("fl oz", "29.5735295625", "floz")),
  /** Temperature; inside °C. */
  TEMPERATURE(
      inside("°C", "c", "degc"), ratio("°F", "5", "9", "-17.777777777777777777778", "f", "degf")),
  /** Difference of temperatures; inside K. */
  DIFFERENCE(inside("K", "°c"), ratio("°F", "5", "9", "0", "f", "degf")),
  /** A long time; inside days. */
  DAYS(
      inside("days", "day", "d", "天"),
      times("weeks", "7", "week", "w", "周"),
      ratio("months", "365", "12", "0", "month", "月", "个月"),
      times("years", "365", "year", "y", "年")),
  /** A short time; inside s. */
  SECONDS(inside("s", "sec", "秒"), times("ms", "0.001")),
  /** Speed; inside m/s. */
  SPEED(
      inside("m/s"),
      ratio("m/min", "1", "60", "0"),
      ratio("ft/min", "0.3048", "60", "0", "fpm"),
      times("in/s", "0.0254")),
  /** Acceleration; inside m/s². */
  ACCELERATION(inside("m/s²", "m/s2"), times("ft/s²", "0.3048", "ft/s2")),
  /** Contact conductance; inside W/(m²·K). */
  CONDUCTANCE(
      inside("W/(m²·K)", "w/(m2.k)", "w/m2k"),
      times("BTU/(h·ft²·°F)", "5.678263", "btu/(h.ft2.f)", "btu/(h.ft2.°f)")),
  /** Share; inside a fraction, typed in per cent. */
  SHARE(ratio("%", "1", "100", "0", "percent")),
  /** Per cent that stay per cent inside. */
  PERCENT(inside("%", "% rh", "percent")),
  /** Parts per million by mass. */
  PPM(inside("ppm", "mg/kg")),
  /** Water per dry product; inside g/g. */
  MOISTURE(inside("g/g"), ratio("%", "1", "100", "0", "g/100g", "g/100 g", "% db")),
  /** Money; inside EUR. */
  MONEY(inside("EUR", "€")),
  /** Cost of time; inside EUR/h. */
  HOUR_RATE(inside("EUR/h", "€/h")),
  /** Frequency; inside cycles a minute. */
  PER_MINUTE(inside("1/min", "/min", "per min", "cycles/min", "cpm")),
  /** A count of packs. */
  PACKS(
      inside("packs", "pack", "包"),
      times("thousand", "1000", "k", "千"),
      times("million", "1000000", "百万"));

  private static final Pattern WRITTEN =
      Pattern.compile(
          "([-+−]?\\d{1,3}(?:[ \\u00a0\\u202f]\\d{3})+(?:\\.\\d+)?"
              + "|[-+−]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d{1,3})?)\\s*(.*)");

  private static final Pattern COMMA = Pattern.compile("[-+−]?\\d+,\\d.*");

  private final List<EntryUnit> units;

  Measure(EntryUnit... units) {
    this.units = List.of(units);
  }

  /** The unit of a figure that is typed without one. */
  String symbol() {
    return units.get(0).shown();
  }

  /** The units that may be typed, as a list for people. */
  String symbols() {
    return units.stream().map(EntryUnit::shown).collect(Collectors.joining(", "));
  }

  /** An inside figure as it is typed: in the first unit, to the last digit. */
  String write(double figure) {
    return (number(figure) + " " + symbol()).strip();
  }

  /** An inside figure with sensible digits, in the first unit. */
  String sensible(double figure) {
    return (Digits.sensible(units.get(0).fromInside(figure).doubleValue()) + " " + symbol())
        .strip();
  }

  private String number(double figure) {
    BigDecimal number = units.get(0).fromInside(figure);
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  /**
   * Reads what was typed.
   *
   * @return the figure in the inside unit
   * @throws WrongEntry saying what would be right
   */
  double read(String text) {
    String typed = halfWidth(text);
    if (COMMA.matcher(typed).matches()) {
      throw new WrongEntry(Words.of("entry.comma"));
    }
    Matcher written = WRITTEN.matcher(typed);
    if (!written.matches()) {
      throw new WrongEntry(
          Words.of("entry.no-figure", typed, write(units.get(0).toInside(BigDecimal.TEN))));
    }
    String digits = written.group(1).replaceAll("[ \\u00a0\\u202f]", "").replace('−', '-');
    return unit(written.group(2)).toInside(new BigDecimal(digits));
  }

  /** Whether a figure that can be read is in the first unit. */
  boolean inFirstUnit(String text) {
    Matcher written = WRITTEN.matcher(halfWidth(text));
    return written.matches() && unit(written.group(2)).equals(units.get(0));
  }

  /** Figures typed in an East Asian width are the same figures. */
  private static String halfWidth(String text) {
    StringBuilder half = new StringBuilder();
    for (char c : text.strip().toCharArray()) {
      half.append(c >= '！' && c <= '～' ? (char) (c - '！' + '!') : c);
    }
    return half.toString();
  }

  private EntryUnit unit(String text) {
    return text.isEmpty()
        ? units.get(0)
        : units.stream()
            .filter(unit -> unit.named(text))
            .findFirst()
            .orElseThrow(() -> new WrongEntry(noUnit(text)));
  }

  private String noUnit(String text) {
    return this == PLAIN
        ? Words.of("measure.no-unit.none", text)
        : Words.of("measure.no-unit", text, symbols());
  }
}
