package plyworth.shared.data;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds what a misspelt word probably meant. */
public final class Spelling {

  private Spelling() {}

  /** The known word nearest to {@code word}, when it is near enough to be a slip. */
  public static Optional<String> nearest(String word, Collection<String> known) {
    return known.stream()
        .min(Comparator.comparingInt((String k) -> distance(word, k)).thenComparing(k -> k))
        .filter(k -> distance(word, k) <= Math.max(2, word.length() / 3));
  }

  /** A sentence that proposes the nearest word, or lists the known ones when they are few. */
  public static String suggestion(String word, Collection<String> known) {
    Optional<String> nearest = nearest(word, known);
    if (nearest.isPresent()) {
      return "Did you mean \"" + nearest.get() + "\"?";
    }
    if (known.isEmpty()) {
      return "Nothing is expected here.";
    }
    return known.size() > 24 ? "" : "Known here: " + String.join(", ", known) + ".";
  }

  /** Number of single-letter insertions, deletions and replacements between two words. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
