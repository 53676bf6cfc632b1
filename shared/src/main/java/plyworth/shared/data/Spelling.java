package plyworth.shared.data;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds what a misspelt word probably meant. */
public final class Spelling {

  private Spelling() {}

  /** The known word nearest to {@code word}, when it is near enough to be a slip. */
  public static Optional<String> nearest(String word, Collection<String> known) {
    Optional<String> sameButForCase = known.stream().filter(word::equalsIgnoreCase).findFirst();
    return sameButForCase.isPresent() ? sameButForCase : nearestByLetters(word, known);
  }

  private static Optional<String> nearestByLetters(String word, Collection<String> known) {
    return known.stream()
        .min(Comparator.comparingInt((String k) -> distance(word, k)).thenComparing(k -> k))
        .filter(k -> distance(word, k) <= Math.max(1, (word.length() + 1) / 3));
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

  /**
   * Number of single-letter insertions, deletions and replacements, and of swaps of neighbours,
   * between two words.
   */
  private static int distance(String a, String b) {
    int[][] rows = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        rows[i][j] = i == 0 || j == 0 ? i + j : nearest(a, b, i, j, rows);
      }
    }
    return rows[a.length()][b.length()];
  }

  private static int nearest(String a, String b, int i, int j, int[][] rows) {
    char x = a.charAt(i - 1);
    char y = b.charAt(j - 1);
    int replaced = rows[i - 1][j - 1] + (x == y ? 0 : 1);
    int steps = Math.min(replaced, Math.min(rows[i - 1][j], rows[i][j - 1]) + 1);
    boolean swapped = i > 1 && j > 1 && x == b.charAt(j - 2) && y == a.charAt(i - 2);
    return swapped ? Math.min(steps, rows[i - 2][j - 2] + 1) : steps;
  }
}
