package plyworth.workbench.desktop.brief;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.stream.Stream;
import plyworth.shared.data.Choice;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** Reads the answers of a draft and notes, field by field, what is wrong with them. */
final class BriefAnswers {

  private final BriefDraft draft;
  private final Map<BriefField, String> faults = new EnumMap<>(BriefField.class);

  BriefAnswers(BriefDraft draft) {
    this.draft = draft;
  }

  /** What is wrong, in the order of the form. */
  Map<BriefField, String> faults() {
    return faults;
  }

  /** Notes what is wrong with a field; what was noted first stays. */
  void fault(BriefField field, String message) {
    faults.putIfAbsent(field, message);
  }

  /**
   * Something that is made of answers; empty when one of them is wrong.
   *
   * @param blamed the field beside which stands what is wrong with all of them together
   */
  <T> Optional<T> made(BriefField blamed, Supplier<T> maker) {
    int before = faults.size();
    try {
      T made = maker.get();
      return faults.size() == before ? Optional.of(made) : Optional.empty();
    } catch (IllegalArgumentException e) {
      if (faults.size() == before) {
        fault(blamed, Reason.of(e.getMessage()));
      }
      return Optional.empty();
    }
  }

  /** What was typed, as it is. */
  String text(BriefField field) {
    return draft.text(field);
  }

  /** Whether a field is asked. */
  boolean asks(BriefField field) {
    return draft.asks(field);
  }

  /** Words that are needed. */
  String words(BriefField field) {
    String words = text(field).strip();
    if (words.isEmpty()) {
      fault(field, Words.of("entry.no-words"));
    }
    return words;
  }

  /** A constant that was chosen. */
  <E extends Enum<E>> E choice(BriefField field, E[] constants) {
    return Stream.of(constants)
        .filter(c -> Choice.plain(c).equals(text(field)))
        .findFirst()
        .orElseThrow();
  }

  /** A figure in the inside unit; empty when none was typed. */
  OptionalDouble figureIfAny(BriefField field) {
    return text(field).isBlank() ? OptionalDouble.empty() : OptionalDouble.of(figure(field));
  }

  /** A figure in the inside unit; NaN when it is wrong. */
  double figure(BriefField field) {
    String typed = text(field);
    try {
      if (typed.isBlank()) {
        throw new WrongEntry(Words.of("entry.needed", example(field.ask())));
      }
      return within(field.ask(), field.ask().measure().read(typed));
    } catch (WrongEntry e) {
      fault(field, e.getMessage());
      return Double.NaN;
    }
  }

  /** A whole number; 0 when it is wrong. */
  int whole(BriefField field) {
    return (int) figure(field);
  }

  static String example(Ask ask) {
    double figure = Math.max(ask.low(), Math.min(ask.high(), 10));
    return ask.measure().write(ask.lowAllowed() || figure > ask.low() ? figure : ask.high());
  }

  /**
   * A figure that keeps to its bounds.
   *
   * @throws WrongEntry when it does not
   */
  static double within(Ask ask, double figure) {
    Measure measure = ask.measure();
    boolean low = ask.lowAllowed() ? figure >= ask.low() : figure > ask.low();
    if (!low || figure > ask.high()) {
      List<String> bounds = List.of(measure.write(ask.low()), high(ask));
      throw new WrongEntry(Words.of("entry." + bound(ask), bounds.get(0), bounds.get(1)));
    }
    if (ask.whole() && figure != Math.rint(figure)) {
      throw new WrongEntry(Words.of("entry.whole"));
    }
    if (!Double.isFinite(figure)) {
      throw new WrongEntry(Words.of("entry.too-large"));
    }
    return figure;
  }

  private static String bound(Ask ask) {
    if (Double.isFinite(ask.high())) {
      return "between";
    }
    return ask.lowAllowed() ? "at-least" : "greater";
  }

  private static String high(Ask ask) {
    return Double.isFinite(ask.high()) ? ask.measure().write(ask.high()) : "";
  }
}
