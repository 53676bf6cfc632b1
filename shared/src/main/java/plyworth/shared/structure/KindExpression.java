package plyworth.shared.structure;

import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * What layers a rule speaks of: tags that must all hold, with {@code -} before a tag that must not,
 * and {@code |} between alternatives. {@code web -porous | foil} means a web that is not porous, or
 * a foil.
 *
 * @param text the expression as written
 */
public record KindExpression(String text) {

  /**
   * Checks the form.
   *
   * @throws IllegalArgumentException when an alternative is empty
   */
  public KindExpression {
    for (String alternative : text.split("\\|", -1)) {
      if (alternative.isBlank()) {
        throw new IllegalArgumentException("\"" + text + "\" names no kind of layer");
      }
    }
  }

  /** Whether a layer with these tags is meant. */
  public boolean matches(Set<String> tags) {
    return Arrays.stream(text.split("\\|")).anyMatch(a -> allHold(a, tags));
  }

  private static boolean allHold(String alternative, Set<String> tags) {
    List<String> words = Arrays.asList(alternative.strip().split("\\s+"));
    return words.stream()
        .allMatch(w -> w.startsWith("-") ? !tags.contains(w.substring(1)) : tags.contains(w));
  }
}
