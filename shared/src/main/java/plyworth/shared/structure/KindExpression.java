package plyworth.shared.structure;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What layers a rule speaks of: tags that must all hold, with {@code -} before a tag that must not,
 * and {@code |} between alternatives. {@code web -porous | foil} means a web that is not porous, or
 * a foil. Equal when written equally.
 */
public final class KindExpression {

  private record Alternative(List<String> required, List<String> refused) {
    static Alternative read(String text) {
      List<String> words = Arrays.asList(text.strip().split("\\s+"));
      return new Alternative(
          words.stream().filter(w -> !w.startsWith("-")).toList(),
          words.stream().filter(w -> w.startsWith("-")).map(w -> w.substring(1)).toList());
    }

    boolean holds(Set<String> tags) {
      return tags.containsAll(required) && refused.stream().noneMatch(tags::contains);
    }
  }

  private final String text;
  private final List<Alternative> alternatives;

  /**
   * Reads an expression.
   *
   * @param text the expression as written
   * @throws IllegalArgumentException when an alternative is empty
   */
  public KindExpression(String text) {
    this.text = text;
    List<String> parts = List.of(text.split("\\|", -1));
    if (parts.stream().anyMatch(String::isBlank)) {
      throw new IllegalArgumentException("\"" + text + "\" names no kind of layer");
    }
    alternatives = parts.stream().map(Alternative::read).toList();
  }

  /** The expression as written. */
  public String text() {
    return text;
  }

  /** The tags it speaks of, required or refused, in the order of the text. */
  public Set<String> tags() {
    Set<String> tags = new LinkedHashSet<>();
    for (Alternative alternative : alternatives) {
      tags.addAll(alternative.required());
      tags.addAll(alternative.refused());
    }
    return tags;
  }

  /** Whether a layer with these tags is meant. */
  public boolean matches(Set<String> tags) {
    for (Alternative alternative : alternatives) {
      if (alternative.holds(tags)) {
        return true;
      }
    }
    return false;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof KindExpression expression && expression.text.equals(text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text;
  }
}
