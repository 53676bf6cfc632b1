package plyworth.workbench.robustness;

import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Draw;

/** Which inputs plugins ask of a draw, told by listening. Any thread may ask. */
public final class HeardInputs {

  private final Map<String, Set<Range>> heard = new TreeMap<>();

  /** A draw that answers as another does, and is listened to. */
  public Draw through(Draw answering) {
    return (input, range) -> {
      synchronized (heard) {
        heard.computeIfAbsent(input, name -> new LinkedHashSet<>()).add(range);
      }
      return answering.figure(input, range);
    };
  }

  /** The ranges that each input was asked with, by its name, in the order of asking. */
  public Map<String, Set<Range>> all() {
    Map<String, Set<Range>> copy = new TreeMap<>();
    synchronized (heard) {
      heard.forEach((input, ranges) -> copy.put(input, new LinkedHashSet<>(ranges)));
    }
    return copy;
  }

  /** The same of those that are uncertain: of ranges that have a width. */
  Map<String, Set<Range>> uncertain() {
    Map<String, Set<Range>> found = all();
    found.values().forEach(ranges -> ranges.removeIf(range -> !(range.low() < range.high())));
    found.values().removeIf(Set::isEmpty);
    return found;
  }
}
