package plyworth.shared.plant;

import java.util.List;
import java.util.stream.Collectors;
import plyworth.shared.quantity.Unit;
import plyworth.shared.structure.AmountUnit;
import plyworth.shared.structure.Layer;

/**
 * Gauges or grammages between two ends, both included: {@code 12 um}, {@code 35 to 120 g/m2}.
 *
 * @param from lowest
 * @param to highest; the same for a single one
 * @param unit what they are
 */
public record AmountSpan(double from, double to, AmountUnit unit) {

  /** Gauges are ordered and quoted rounded; common practice. */
  private static final double ROUNDED = 0.01;

  /**
   * Checks the ends.
   *
   * @throws IllegalArgumentException when they are not positive and finite, or the wrong way round
   */
  public AmountSpan {
    if (!(from > 0) || !(to >= from) || !Double.isFinite(to)) {
      throw new IllegalArgumentException(
          "from "
              + from
              + " to "
              + to
              + " is no span of amounts; write the smaller first, above 0");
    }
  }

  /**
   * Reads the written form; gauges may come in um, nm, mil or gauge, grammages in g/m2 or
   * lb/3000ft2.
   *
   * @throws IllegalArgumentException saying what would be right
   */
  public static AmountSpan read(String text) {
    String[] words = text.strip().split("\\s+");
    boolean single = words.length == 2;
    boolean span = words.length == 4 && words[1].equals("to");
    if (!single && !span) {
      throw wrong(text);
    }
    Unit unit =
        Unit.named(words[words.length - 1])
            .filter(u -> u.kind() == Unit.Kind.GAUGE || u.kind() == Unit.Kind.GRAMMAGE)
            .orElseThrow(() -> wrong(text));
    return new AmountSpan(
        unit.toInside(number(words[0], text)),
        unit.toInside(number(words[span ? 2 : 0], text)),
        unit.kind() == Unit.Kind.GAUGE ? AmountUnit.UM : AmountUnit.GSM);
  }

  private static double number(String word, String text) {
    try {
      return Double.parseDouble(word);
    } catch (NumberFormatException e) {
      throw wrong(text);
    }
  }

  private static IllegalArgumentException wrong(String text) {
    return new IllegalArgumentException(
        ("\"" + text + "\" is neither an amount nor a span of amounts; write ")
            + "\"12 um\" or \"35 to 120 g/m2\"");
  }

  /** The written forms of some, joined by commas. */
  public static String list(List<AmountSpan> spans) {
    return spans.stream().map(AmountSpan::toString).collect(Collectors.joining(", "));
  }

  /**
   * Whether the amount of a layer lies between the ends, to 1 %: gauges are quoted rounded.
   *
   * @param density of the layer's material, kg/m³
   */
  public boolean holds(Layer layer, double density) {
    double amount = unit == AmountUnit.UM ? layer.gaugeUm(density) : layer.grammage(density);
    return amount >= from * (1 - ROUNDED) && amount <= to * (1 + ROUNDED);
  }

  /**
   * Whether a layer lies within one of some spans. Spans in the unit that the layer is stated in
   * count alone where there are any: a press that takes film of 12 to 60 µm and paper of 30 to 120
   * g/m² is asked about each in its own unit.
   *
   * @param density of the layer's material, kg/m³
   * @return true when there are no spans, which means no limit
   */
  public static boolean anyHolds(List<AmountSpan> spans, Layer layer, double density) {
    boolean own = spans.stream().anyMatch(s -> s.unit == layer.unit());
    return spans.isEmpty()
        || spans.stream()
            .filter(s -> !own || s.unit == layer.unit())
            .anyMatch(s -> s.holds(layer, density));
  }

  @Override
  public String toString() {
    String ends = from == to ? plain(from) : plain(from) + " to " + plain(to);
    return ends + " " + unit.unit().plain();
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
