package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What keeps candidates out of a ranking, told from candidates spread evenly over all of them.
 *
 * @param looked number of candidates looked at
 * @param reasons what keeps them out, the most frequent first
 */
public record Hindrances(int looked, List<Reason> reasons) {

  private static final int MOST = 500;

  /**
   * One thing that keeps candidates out.
   *
   * @param name what it is: {@code plugin/rule}, a limit, or what is missing
   * @param candidates how many of those looked at it keeps out
   * @param example one of them
   */
  public record Reason(String name, int candidates, Sheet example) {}

  /** Copies the list. */
  public Hindrances {
    reasons = List.copyOf(reasons);
  }

  /** Looks at every candidate, or at 500 of them. */
  public static Hindrances of(Ranked ranked) {
    long all = ranked.scored().compiled().paths().count();
    int looked = (int) Math.min(all, MOST);
    Map<String, List<Sheet>> met = new LinkedHashMap<>();
    for (int i = 0; i < looked; i++) {
      long path = Math.floorDiv(all * i, looked);
      Sheet sheet = ranked.sheet(ranked.structure(path));
      names(ranked, sheet).forEach(n -> met.computeIfAbsent(n, k -> new ArrayList<>()).add(sheet));
    }
    List<Reason> reasons = new ArrayList<>();
    met.forEach((name, sheets) -> reasons.add(new Reason(name, sheets.size(), sheets.get(0))));
    reasons.sort(Comparator.comparingInt(Reason::candidates).reversed());
    return new Hindrances(looked, reasons);
  }

  private static Set<String> names(Ranked ranked, Sheet sheet) {
    Set<String> names = new LinkedHashSet<>();
    Hindrance.of(sheet, ranked.ranking().model()).forEach(h -> names.add(h.name()));
    return names;
  }
}
