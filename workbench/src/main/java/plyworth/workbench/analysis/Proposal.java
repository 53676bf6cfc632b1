package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import plyworth.shared.structure.Structure;
import plyworth.workbench.ranking.Group;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Valuation;

/**
 * What to do next: two structures to trial, which hold their barrier in two ways so that they do
 * not fail for one reason, and one to fall back on, whose barrier is that of today and known from
 * the field (common practice).
 *
 * @param trials two, best first; fewer where fewer candidates are ranked
 * @param fallback empty when nothing with today's barrier is free of blocks
 */
public record Proposal(List<Pick> trials, Optional<Pick> fallback) {

  /** Why a structure is proposed. */
  public enum Reason {
    /** No candidate is worth more. */
    LEADS,
    /** No candidate with another barrier is worth more. */
    OTHER_BARRIER,
    /** No candidate of another kind is worth more, and all share one barrier. */
    OTHER_KIND,
    /** No other candidate with today's barrier is worth more. */
    TODAYS_BARRIER,
    /** It is what runs today. */
    TODAY
  }

  /**
   * A structure that is proposed.
   *
   * @param structure the structure
   * @param path its number; empty for today's structure
   * @param valuation what it is worth
   * @param reason why it is proposed
   */
  public record Pick(Structure structure, OptionalLong path, Valuation valuation, Reason reason) {}

  /** Copies the list. */
  public Proposal {
    trials = List.copyOf(trials);
  }

  /** Proposes from all candidates of a ranking; nothing where no criterion counts. */
  public static Proposal of(Ranked ranked) {
    if (!ranked.ranking().model().weighted()) {
      return new Proposal(List.of(), Optional.empty());
    }
    StructureKinds kinds = ranked.kinds();
    List<RankedCandidate> byBarrier = ranked.bestOfEach(2, kinds::barrier);
    List<Pick> trials = new ArrayList<>();
    if (!byBarrier.isEmpty()) {
      trials.add(pick(ranked, byBarrier.get(0), Reason.LEADS));
      second(ranked, byBarrier).ifPresent(trials::add);
    }
    return new Proposal(trials, fallback(ranked, trials));
  }

  private static Optional<Pick> second(Ranked ranked, List<RankedCandidate> byBarrier) {
    if (byBarrier.size() > 1) {
      return Optional.of(pick(ranked, byBarrier.get(1), Reason.OTHER_BARRIER));
    }
    return ranked.bestOfEach(2, ranked.kinds()::of).stream()
        .skip(1)
        .findFirst()
        .map(candidate -> pick(ranked, candidate, Reason.OTHER_KIND));
  }

  private static Optional<Pick> fallback(Ranked ranked, List<Pick> trials) {
    StructureKinds kinds = ranked.kinds();
    Sheet today = ranked.baseline();
    List<String> barrier = kinds.barrier(today.structure());
    List<Structure> taken = trials.stream().map(Pick::structure).toList();
    return ranked
        .bestOfEach(1, structure -> kinds.barrier(structure).equals(barrier) ? barrier : null)
        .stream()
        .findFirst()
        .map(candidate -> pick(ranked, candidate, Reason.TODAYS_BARRIER))
        .filter(pick -> !taken.contains(pick.structure()))
        .or(() -> asItIs(today, taken));
  }

  private static Optional<Pick> asItIs(Sheet today, List<Structure> taken) {
    return today.group() == Group.RANKED && !taken.contains(today.structure())
        ? Optional.of(
            new Pick(today.structure(), OptionalLong.empty(), today.valuation(), Reason.TODAY))
        : Optional.empty();
  }

  private static Pick pick(Ranked ranked, RankedCandidate candidate, Reason reason) {
    return new Pick(
        ranked.structure(candidate.path()),
        OptionalLong.of(candidate.path()),
        candidate.valuation(),
        reason);
  }
}
