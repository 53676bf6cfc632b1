package plyworth.workbench.desktop.position;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plyworth.shared.quantity.Unit;
import plyworth.shared.structure.AmountUnit;
import plyworth.workbench.desktop.word.Words;

/**
 * Gauges or grammages as people type them: one or several, each with a unit or all with the last
 * one: {@code 12, 15, 20 um}.
 */
final class Amounts {

  /** A gauge in µm or a grammage in g/m². */
  record Amount(double figure, AmountUnit unit) {}

  private static final Pattern COMMA_FOR_POINT = Pattern.compile("\\d+,\\d+");
  private static final Pattern PART = Pattern.compile("([^\\s]+?)\\s*([\\p{L}µμ][^\\s,;]*)?");

  private Amounts() {}

  /**
   * Reads amounts.
   *
   * @throws IllegalArgumentException saying what is wrong and what would be right, for people
   */
  static List<Amount> read(String text) {
    Matcher comma = COMMA_FOR_POINT.matcher(text);
    if (comma.find()) {
      throw wrong("amounts.comma", comma.group(), comma.group().replace(',', '.'));
    }
    if (text.isBlank()) {
      throw wrong("amounts.empty");
    }
    List<Amount> amounts = new ArrayList<>();
    List<String> parts = List.of(text.strip().split("\\s*[,;]\\s*"));
    String unit = "";
    for (int i = parts.size() - 1; i >= 0; i--) {
      Matcher part = PART.matcher(parts.get(i));
      if (!part.matches()) {
        throw wrong("amounts.number", parts.get(i));
      }
      unit = Objects.requireNonNullElse(part.group(2), unit);
      if (unit.isEmpty()) {
        throw wrong("amounts.no-unit", text.strip());
      }
      Amount amount = amount(part.group(1), unit(unit));
      if (!amounts.contains(amount)) {
        amounts.add(0, amount);
      }
    }
    return List.copyOf(amounts);
  }

  private static Unit unit(String word) {
    return Unit.named(word)
        .filter(u -> u.kind() == Unit.Kind.GAUGE || u.kind() == Unit.Kind.GRAMMAGE)
        .orElseThrow(() -> wrong("amounts.unit", word));
  }

  private static Amount amount(String number, Unit unit) {
    double figure;
    try {
      figure = unit.toInside(Double.parseDouble(number));
    } catch (NumberFormatException e) {
      throw wrong("amounts.number", number);
    }
    if (!(figure > 0) || !Double.isFinite(figure)) {
      throw wrong("amounts.positive", number);
    }
    boolean gauge = unit.kind() == Unit.Kind.GAUGE;
    return new Amount(figure, gauge ? AmountUnit.UM : AmountUnit.GSM);
  }

  private static IllegalArgumentException wrong(String key, Object... about) {
    return new IllegalArgumentException(Words.of(key, about));
  }
}
