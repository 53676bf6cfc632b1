package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.graph.NearestCandidates;
import plyworth.workbench.ranking.Group;

/**
 * What keeps a structure from being offered or ranked, and the smallest changes that let it in.
 *
 * @param sheet the structure, scored in full, on offer or not
 * @param hindrances what keeps it out of the ranking, or would if it were on offer
 * @param admission what the study lacks to offer it
 * @param nearest the candidates next to it, nearest first, itself left out; none when it is ranked
 * @param nearestRanked the nearest of those looked at that is ranked
 * @param looked how many of the nearest were looked at
 */
public record Inquiry(
    Sheet sheet,
    List<Hindrance> hindrances,
    Admission admission,
    List<Neighbour> nearest,
    Optional<Neighbour> nearestRanked,
    int looked) {

  /** Most candidates to look at for one that is ranked. */
  private static final int MOST = 200;

  /**
   * A candidate next to the structure.
   *
   * @param near its path number and what turns the structure into it
   * @param sheet the candidate, scored in full
   */
  public record Neighbour(NearestCandidates.Near near, Sheet sheet) {}

  /** Copies the lists. */
  public Inquiry {
    hindrances = List.copyOf(hindrances);
    nearest = List.copyOf(nearest);
  }

  /**
   * Looks into a structure whose materials and processes are at hand.
   *
   * @param shown how many of the nearest candidates to give
   */
  public static Inquiry of(Ranked ranked, Structure structure, int shown) {
    Sheet sheet = ranked.sheet(structure);
    List<Neighbour> around =
        sheet.onOffer() && isRanked(sheet) ? List.of() : around(ranked, structure, shown);
    return new Inquiry(
        sheet,
        Hindrance.of(sheet, ranked.ranking().model()),
        Admission.of(ranked.study(), structure, sheet.objections()),
        around.subList(0, Math.min(shown, around.size())),
        around.stream().filter(n -> isRanked(n.sheet())).findFirst(),
        around.size());
  }

  /** The nearest candidates, as many as asked for and on to the first that is ranked. */
  private static List<Neighbour> around(Ranked ranked, Structure structure, int fewest) {
    NearestCandidates candidates =
        new NearestCandidates(
            ranked.scored().compiled().paths(), structure, ranked.study().processesAtHand());
    List<Neighbour> around = new ArrayList<>();
    boolean found = false;
    while (candidates.hasNext() && around.size() < (found ? fewest : MOST)) {
      NearestCandidates.Near near = candidates.next();
      if (!near.edits().isEmpty()) {
        Sheet sheet = ranked.sheet(ranked.structure(near.path()));
        around.add(new Neighbour(near, sheet));
        found |= isRanked(sheet);
      }
    }
    return around;
  }

  private static boolean isRanked(Sheet sheet) {
    return sheet.group() == Group.RANKED;
  }

  /** Whether relaxing one limit alone lets the structure in, as far as it is on offer. */
  public boolean oneLimitSuffices() {
    return hindrances.size() == 1 && hindrances.get(0) instanceof Hindrance.BrokenLimit;
  }
}
