package plyworth.shared.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;

/** A JSON object in the making; keys keep the order in which they are put. */
final class Entries {

  private final Map<String, Json> entries = new LinkedHashMap<>();

  Entries put(String key, Json value) {
    entries.put(key, value);
    return this;
  }

  Entries put(String key, String text) {
    return put(key, Json.of(text));
  }

  Entries put(String key, double number) {
    return put(key, Json.of(number));
  }

  Entries put(String key, Enum<?> choice) {
    return put(key, Json.of(Choice.plain(choice)));
  }

  /** A list; an item is written by {@code writer}. */
  <T> Entries put(String key, Iterable<T> items, Function<T, Json> writer) {
    List<Json> written = new ArrayList<>();
    items.forEach(item -> written.add(writer.apply(item)));
    return put(key, Json.of(written));
  }

  /** An object used as a map; a value is written by {@code writer}. */
  <T> Entries put(String key, Map<String, T> map, Function<T, Json> writer) {
    Entries inner = new Entries();
    map.forEach((k, v) -> inner.put(k, writer.apply(v)));
    return put(key, inner.json());
  }

  /** Null when there is nothing. */
  <T> Entries put(String key, Optional<T> value, Function<T, Json> writer) {
    return put(key, value.map(writer).orElse(Json.of((String) null)));
  }

  Json.Obj json() {
    return new Json.Obj(Json.MADE, entries);
  }
}
