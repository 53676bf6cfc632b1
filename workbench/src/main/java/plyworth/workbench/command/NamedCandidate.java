package plyworth.workbench.command;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import plyworth.shared.data.Spelling;
import plyworth.shared.route.StructureText;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.GroupCounts;
import plyworth.workbench.ranking.RankedCandidate;

/**
 * A candidate as people name it: a rank, {@code baseline}, or a structure in layer notation.
 *
 * @param rank the rank; 0 when a structure is named
 * @param structure the structure; empty when a rank is named
 */
record NamedCandidate(int rank, Optional<Structure> structure) {

  /** Ranks that can be named, and listed. */
  static final int MOST = 100_000;

  private static final String BASELINE = "baseline";

  static NamedCandidate read(String text, Study study) {
    if (text.matches("[+-]?\\d+")) {
      return new NamedCandidate(rank(text), Optional.empty());
    }
    if (text.equals(BASELINE)) {
      return new NamedCandidate(0, Optional.of(study.baseline()));
    }
    if (!text.strip().contains(" ")) {
      throw new WrongInput(
          "\""
              + text
              + "\" is neither a rank, nor \"baseline\", nor a structure such as"
              + " \"kraft-paper 50 g/m2 / ldpe 25 um @extrusion-coating\". "
              + Spelling.nearest(text, List.of(BASELINE))
                  .map(b -> "Did you mean \"" + b + "\"?")
                  .orElse(""));
    }
    return new NamedCandidate(0, Optional.of(structure("CANDIDATE", text, study)));
  }

  private static int rank(String text) {
    BigInteger rank = new BigInteger(text);
    if (rank.signum() <= 0) {
      throw new WrongInput("there is no rank " + text + ": ranks are counted from 1");
    }
    return rank.min(BigInteger.valueOf(Integer.MAX_VALUE)).intValue();
  }

  /** Reads a structure; every material and process in it must be at hand. */
  static Structure structure(String argument, String text, Study study) {
    try {
      return new StructureText(study.materialsAtHand(), study.processesAtHand()).read(text);
    } catch (IllegalArgumentException e) {
      throw new WrongInput(argument + ": " + e.getMessage());
    }
  }

  /** The structure of the rank. */
  Structure ranked(Ranked ranked) {
    GroupCounts counts = ranked.ranking().counts();
    long most = counts.ranked() + counts.open();
    if (rank > Math.min(most, MOST)) {
      throw new WrongInput(
          most > MOST
              ? "ranks can be named up to " + MOST + "; name the structure instead"
              : noSuchRank(counts));
    }
    List<RankedCandidate> best = ranked.ranker().refine(ranked.ranking().model(), rank).best();
    if (best.size() < rank) {
      throw new WrongInput(noSuchRank(counts));
    }
    return ranked.structure(best.get(rank - 1).path());
  }

  private String noSuchRank(GroupCounts counts) {
    String ranked = counts.ranked() == 1 ? "1 candidate is" : counts.ranked() + " candidates are";
    return "there is no such rank: "
        + (counts.ranked() == 0
            ? "no candidate is ranked; the command rank says what keeps them out"
            : ranked + " ranked");
  }
}
