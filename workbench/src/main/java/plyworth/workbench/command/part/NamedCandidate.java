package plyworth.workbench.command.part;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import plyworth.shared.data.Spelling;
import plyworth.shared.route.StructureText;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.RankedCandidate;

/**
 * A candidate as people name it: a rank, {@code baseline}, or a structure in layer notation.
 *
 * @param rank the rank; 0 when a structure is named
 * @param structure the structure; empty when a rank is named
 */
public record NamedCandidate(int rank, Optional<Structure> structure) {

  /** Ranks that can be named, and listed. */
  public static final int MOST = 100_000;

  private static final String BASELINE = "baseline";

  /** A rank, {@code baseline} or a structure, as it was typed. */
  public static NamedCandidate read(String text, Study study) {
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
  public static Structure structure(String argument, String text, Study study) {
    try {
      return new StructureText(study.materialsAtHand(), study.processesAtHand()).read(text);
    } catch (IllegalArgumentException e) {
      throw new WrongInput(argument + ": " + e.getMessage());
    }
  }

  /** Reads a structure, or the word for today's. */
  public static Structure structureOrToday(String argument, String text, Study study) {
    return text.equals(BASELINE) ? study.baseline() : structure(argument, text, study);
  }

  /** How many candidates must be ranked to find it; at least 1. */
  int top() {
    return Math.max(1, Math.min(rank, MOST));
  }

  /** The structure that is named, in a ranking of the best {@link #top}. */
  public Structure in(Ranked ranked) {
    return structure.orElseGet(() -> ranked(ranked));
  }

  private Structure ranked(Ranked ranked) {
    List<RankedCandidate> best = ranked.best();
    if (best.size() < rank) {
      throw new WrongInput(
          best.size() == MOST
              ? "ranks can be named up to " + MOST + "; name the structure instead"
              : noSuchRank(best.size()));
    }
    return ranked.structure(best.get(rank - 1).path());
  }

  private static String noSuchRank(int ranked) {
    return "there is no such rank: "
        + (ranked == 0
            ? "no candidate is ranked; the command rank says what keeps them out"
            : ranked == 1 ? "1 candidate is ranked" : ranked + " candidates are ranked");
  }
}
