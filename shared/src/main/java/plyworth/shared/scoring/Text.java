package plyworth.shared.scoring;

import java.util.List;

/**
 * A sentence to be: a key of the plugin's {@link ScoringPlugin#texts} and its arguments.
 *
 * <p>The workbench makes the sentence with {@link java.text.MessageFormat}; numbers are shown with
 * sensible digits when they are passed as numbers.
 *
 * @param key key of the resource bundle
 * @param arguments texts and numbers for {0}, {1} …
 */
public record Text(String key, List<Object> arguments) {

  /**
   * Copies the arguments.
   *
   * @throws IllegalArgumentException when an argument is neither a text nor a number
   */
  public Text {
    arguments = List.copyOf(arguments);
    for (Object argument : arguments) {
      if (!(argument instanceof String || argument instanceof Number)) {
        throw new IllegalArgumentException("argument of " + key + " is neither text nor number");
      }
    }
  }

  /** A text of a key and its arguments. */
  public static Text of(String key, Object... arguments) {
    return new Text(key, List.of(arguments));
  }
}
