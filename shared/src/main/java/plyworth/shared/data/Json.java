package plyworth.shared.data;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A JSON value that knows where it stood. Read it through {@link Fields}. */
public sealed interface Json {

  /** Place of values that were made, not read. */
  Place MADE = new Place("", 0, 0, "");

  /** Where the value stood in its file. */
  Place place();

  /**
   * An object; keys keep their order.
   *
   * @param place where it stood
   * @param entries values by key
   */
  record Obj(Place place, Map<String, Json> entries) implements Json {
    /** Copies the entries, order kept. */
    public Obj {
      entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
    }
  }

  /**
   * An array.
   *
   * @param place where it stood
   * @param items its values
   */
  record Arr(Place place, List<Json> items) implements Json {
    /** Copies the items. */
    public Arr {
      items = List.copyOf(items);
    }
  }

  /**
   * A text.
   *
   * @param place where it stood
   * @param text the text
   */
  record Text(Place place, String text) implements Json {}

  /**
   * A finite number.
   *
   * @param place where it stood
   * @param number the number
   */
  record Num(Place place, double number) implements Json {}

  /**
   * True or false.
   *
   * @param place where it stood
   * @param flag the value
   */
  record Flag(Place place, boolean flag) implements Json {}

  /**
   * Null: nothing is known.
   *
   * @param place where it stood
   */
  record Null(Place place) implements Json {}

  /** A text that was made. */
  static Json of(String text) {
    return text == null ? new Null(MADE) : new Text(MADE, text);
  }

  /** A number that was made; NaN, the unknown, becomes null. */
  static Json of(double number) {
    return Double.isNaN(number) ? new Null(MADE) : new Num(MADE, number);
  }

  /** A flag that was made. */
  static Json of(boolean flag) {
    return new Flag(MADE, flag);
  }

  /** An array that was made. */
  static Json of(List<? extends Json> items) {
    return new Arr(MADE, List.copyOf(items));
  }

  /** An object that was made; keys keep their order. */
  static Json of(Map<String, Json> entries) {
    return new Obj(MADE, entries);
  }
}
