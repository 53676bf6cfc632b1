package plyworth.workbench.ranking;

import java.util.List;

/**
 * The ranked candidates that no other one beats: none is at least as good in the value of every
 * criterion with weight and better in one. Candidates with equal values stay together.
 *
 * @param paths path numbers, ascending
 * @param complete whether it is the whole front; otherwise it grew beyond the cap, and holds
 *     candidates of which some may be beaten by what was not looked at
 * @param cap most candidates it may hold
 */
public record ParetoFront(List<Long> paths, boolean complete, int cap) {

  /** Copies the list. */
  public ParetoFront {
    paths = List.copyOf(paths);
  }
}
