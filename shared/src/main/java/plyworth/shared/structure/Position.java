package plyworth.shared.structure;

import java.util.HashSet;
import java.util.List;

/**
 * A place in the stack, counted from the outside in, with what may stand there.
 *
 * @param title what the place is for, for example {@code Barrier}
 * @param options at least one, no two alike
 */
public record Position(String title, List<Option> options) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException without options, or when an option stands twice
   */
  public Position {
    options = List.copyOf(options);
    if (options.isEmpty()) {
      throw new IllegalArgumentException("the position \"" + title + "\" has no option");
    }
    if (new HashSet<>(options).size() < options.size()) {
      throw new IllegalArgumentException("the position \"" + title + "\" has an option twice");
    }
  }
}
