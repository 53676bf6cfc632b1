package plyworth.workbench.desktop.session;

import java.util.Optional;
import java.util.function.Supplier;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.RankingMove;

/** How an edit of the data moved the best candidates, told until the next edit. */
public final class Movement {

  private Supplier<String> label;
  private Ranked before;
  private BestList then;
  private Told told;

  /**
   * What is told.
   *
   * @param label names the edit, in the language of the moment it is asked
   * @param now the ranking after it
   */
  public record Told(Supplier<String> label, RankingMove move, Ranked now) {}

  /** Notes an edit, and the ranking that it will move; null when there was none. */
  void begin(Supplier<String> edit, Ranked ranked, BestList kinds) {
    forget();
    if (ranked != null && ranked.ranking().complete()) {
      label = edit;
      before = ranked;
      then = kinds;
    }
  }

  /** Tells nothing any more. */
  void forget() {
    label = null;
    before = null;
    then = null;
    told = null;
  }

  /** Compares with the ranking after the edit; one that was stopped half way tells nothing. */
  void arrive(Ranked now, BestList kinds) {
    if (label != null && told == null && now.ranking().complete()) {
      told = new Told(label, RankingMove.between(before, then, now, kinds), now);
    }
  }

  /** What is told; empty where nothing is. */
  Optional<Told> told() {
    return Optional.ofNullable(told);
  }
}
