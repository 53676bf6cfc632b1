package plyworth.workbench.desktop.position;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import plyworth.shared.quantity.Unit;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;

/** Figures of limits as people type them: a number, in the unit of the criterion or in another. */
final class LimitFigure {

  private LimitFigure() {}

  /**
   * Reads a figure.
   *
   * @param unit unit of the criterion in plain spelling; empty for a pure number
   * @return the figure in that unit
   * @throws IllegalArgumentException saying what is wrong and what would be right, for people
   */
  static double read(String text, String unit) {
    String typed = text.strip();
    if (typed.isEmpty()) {
      throw wrong("limit.empty", UnitText.of(unit));
    }
    String[] parts = typed.split("\\s+", 2);
    double figure = number(parts[0]);
    return parts.length == 1 || same(parts[1], unit) ? figure : converted(figure, parts[1], unit);
  }

  private static boolean same(String typed, String unit) {
    return typed.equals(unit) || typed.equals(UnitText.of(unit));
  }

  private static double number(String word) {
    try {
      double figure = Double.parseDouble(word);
      if (Double.isFinite(figure)) {
        return figure;
      }
    } catch (NumberFormatException e) {
      throw wrong("limit.number", word);
    }
    throw wrong("limit.number", word);
  }

  private static double converted(double figure, String typed, String unit) {
    Optional<Unit> own = Unit.named(unit);
    return Unit.named(typed)
        .filter(u -> own.filter(o -> o.kind() == u.kind()).isPresent())
        .map(u -> own.orElseThrow().fromInside(u.toInside(figure)))
        .orElseThrow(() -> wrong("limit.unit", typed, known(own, unit)));
  }

  private static String known(Optional<Unit> own, String unit) {
    return own.map(
            o ->
                Arrays.stream(Unit.values())
                    .filter(u -> u.kind() == o.kind())
                    .map(Unit::plain)
                    .collect(Collectors.joining(", ")))
        .orElse(unit.isEmpty() ? Words.of("limit.no-unit") : UnitText.of(unit));
  }

  private static IllegalArgumentException wrong(String key, Object... about) {
    return new IllegalArgumentException(Words.of(key, about));
  }
}
