package plyworth.shared.data;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The fields of one JSON object, asked for one by one; {@link #done()} refuses what nobody asked
 * for.
 *
 * <p>Every method throws {@link DataException} with the place when a field is missing or of another
 * kind.
 */
public final class Fields {

  private final Json.Obj object;
  private final Set<String> asked = new LinkedHashSet<>();

  private Fields(Json.Obj object) {
    this.object = object;
  }

  /** The fields of {@code json}, which must be an object. */
  public static Fields of(Json json) {
    if (json instanceof Json.Obj object) {
      return new Fields(object);
    }
    throw wrongKind(json, "an object { … }");
  }

  /** Reads a whole object and refuses unknown keys. */
  public static <T> T read(Json json, Function<Fields, T> reader) {
    Fields fields = of(json);
    T value = checked(fields.place(), () -> reader.apply(fields));
    fields.done();
    return value;
  }

  /** Where the object stands. */
  public Place place() {
    return object.place();
  }

  /** Whether the key is there and not null. */
  public boolean has(String key) {
    asked.add(key);
    Json value = object.entries().get(key);
    return value != null && !(value instanceof Json.Null);
  }

  /** The value of a key that must be there. */
  public Json value(String key) {
    asked.add(key);
    Json value = object.entries().get(key);
    if (value == null) {
      throw new DataException(place(), "the key \"" + key + "\" is missing", inPlaceOf(key));
    }
    return value;
  }

  private String inPlaceOf(String key) {
    Set<String> others = new LinkedHashSet<>(object.entries().keySet());
    others.removeAll(asked);
    return Spelling.nearest(key, others)
        .map(other -> "Is \"" + other + "\" meant to be it?")
        .orElse("Add it.");
  }

  /** The value of a key that must be there, read by {@code reader}. */
  public <T> T value(String key, Function<Json, T> reader) {
    Json value = value(key);
    return checked(value.place(), () -> reader.apply(value));
  }

  /** A text. */
  public String text(String key) {
    return text(value(key));
  }

  /** A text, or {@code otherwise} when the key is absent or null. */
  public String text(String key, String otherwise) {
    return has(key) ? text(key) : otherwise;
  }

  /** A finite number. */
  public double number(String key) {
    return number(value(key));
  }

  /** A number, or NaN when the key is absent or null: unknown. */
  public double numberOrUnknown(String key) {
    return has(key) ? number(key) : Double.NaN;
  }

  /** A whole number. */
  public int whole(String key) {
    double number = number(key);
    if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
      throw new DataException(
          value(key).place(), number + " is not a whole number", "Write a whole number.");
    }
    return (int) number;
  }

  /** True or false. */
  public boolean flag(String key) {
    if (value(key) instanceof Json.Flag flag) {
      return flag.flag();
    }
    throw wrongKind(value(key), "true or false");
  }

  /** One of the constants of an enum, written in lower case with hyphens. */
  public <E extends Enum<E>> E choice(String key, Class<E> type) {
    return choice(value(key), type);
  }

  /** An object, read by {@code reader}; unknown keys in it are refused. */
  public <T> T object(String key, Function<Fields, T> reader) {
    return read(value(key), reader);
  }

  /** An array whose items are read by {@code reader}; an absent key is an empty list. */
  public <T> List<T> list(String key, Function<Json, T> reader) {
    return has(key) ? list(value(key), reader) : List.of();
  }

  /** An array of objects. */
  public <T> List<T> objects(String key, Function<Fields, T> reader) {
    return list(key, item -> read(item, reader));
  }

  /** An array of texts. */
  public List<String> texts(String key) {
    return list(key, Fields::text);
  }

  /** An object used as a map; an absent key is an empty map. */
  public <T> Map<String, T> map(String key, Function<Json, T> reader) {
    if (!has(key)) {
      return Map.of();
    }
    Map<String, T> map = new LinkedHashMap<>();
    entries(value(key)).forEach((k, v) -> map.put(k, checked(v.place(), () -> reader.apply(v))));
    return map;
  }

  /** The entries of an object used as a map. */
  public static Map<String, Json> entries(Json json) {
    return of(json).object.entries();
  }

  /** Refuses keys that nobody asked for. */
  public void done() {
    for (Map.Entry<String, Json> entry : object.entries().entrySet()) {
      if (!asked.contains(entry.getKey())) {
        throw new DataException(
            entry.getValue().place(),
            "the key \"" + entry.getKey() + "\" is not known here",
            Spelling.suggestion(entry.getKey(), asked));
      }
    }
  }

  /** The items of an array, read one by one. */
  public static <T> List<T> list(Json json, Function<Json, T> reader) {
    if (!(json instanceof Json.Arr array)) {
      throw wrongKind(json, "a list [ … ]");
    }
    List<T> items = new ArrayList<>();
    for (Json item : array.items()) {
      items.add(checked(item.place(), () -> reader.apply(item)));
    }
    return List.copyOf(items);
  }

  /** The text of a JSON text. */
  public static String text(Json json) {
    if (json instanceof Json.Text text) {
      return text.text();
    }
    throw wrongKind(json, "a text in quotes");
  }

  /** The number of a JSON number. */
  public static double number(Json json) {
    if (json instanceof Json.Num number) {
      return number.number();
    }
    throw wrongKind(json, "a number");
  }

  /** The constant of an enum that a JSON text names. */
  public static <E extends Enum<E>> E choice(Json json, Class<E> type) {
    String text = text(json);
    List<String> names = new ArrayList<>();
    for (E constant : type.getEnumConstants()) {
      names.add(Choice.plain(constant));
      if (Choice.plain(constant).equals(text)) {
        return constant;
      }
    }
    throw new DataException(
        json.place(), "\"" + text + "\" is not known here", Spelling.suggestion(text, names));
  }

  private static <T> T checked(Place place, java.util.function.Supplier<T> reading) {
    try {
      return reading.get();
    } catch (IllegalArgumentException e) {
      throw new DataException(place, e.getMessage(), "");
    }
  }

  private static DataException wrongKind(Json json, String wanted) {
    String found =
        switch (json.getClass().getSimpleName()) {
          case "Obj" -> "an object";
          case "Arr" -> "a list";
          case "Text" -> "a text";
          case "Num" -> "a number";
          case "Flag" -> "true or false";
          default -> "null";
        };
    return new DataException(
        json.place(), "found " + found + " where " + wanted + " is due", "Write " + wanted + ".");
  }
}
