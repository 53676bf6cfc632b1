package plyworth.workbench.ranking;

/**
 * How many candidates stand in each group.
 *
 * @param ranked number in {@link Group#RANKED}
 * @param open number in {@link Group#OPEN}
 * @param cannotBeJudged number in {@link Group#CANNOT_BE_JUDGED}
 * @param excluded number in {@link Group#EXCLUDED}
 * @param blocked number in {@link Group#BLOCKED}
 */
public record GroupCounts(
    long ranked, long open, long cannotBeJudged, long excluded, long blocked) {

  /** None at all. */
  static final GroupCounts NONE = new GroupCounts(0, 0, 0, 0, 0);

  /** Counts by {@link Group#ordinal}. */
  static GroupCounts of(long[] counts) {
    return new GroupCounts(counts[0], counts[1], counts[2], counts[3], counts[4]);
  }

  /** Both together. */
  GroupCounts plus(GroupCounts other) {
    return new GroupCounts(
        ranked + other.ranked,
        open + other.open,
        cannotBeJudged + other.cannotBeJudged,
        excluded + other.excluded,
        blocked + other.blocked);
  }

  /** All candidates. */
  public long total() {
    return ranked + open + cannotBeJudged + excluded + blocked;
  }
}
