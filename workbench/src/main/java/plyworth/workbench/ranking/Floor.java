package plyworth.workbench.ranking;

import java.util.List;

/**
 * A shortlist to which a value is known that the worst of it will not fall below, so that most
 * candidates need not be looked at.
 */
final class Floor implements Shortlist {

  /** Values in full and values by columns differ by rounding. */
  private static final double ROUNDING = 1e-9;

  private final Shortlist list;
  private final double floor;

  /**
   * A list with a floor.
   *
   * @param floor value that at least as many candidates reach as the list will hold
   */
  Floor(Shortlist list, double floor) {
    this.list = list;
    this.floor = floor - ROUNDING;
  }

  @Override
  public boolean admits(double value, long path) {
    return value >= floor && list.admits(value, path);
  }

  @Override
  public boolean wants(double value, long path) {
    return value >= floor && list.wants(value, path);
  }

  @Override
  public void offer(double value, long path) {
    if (value >= floor) {
      list.offer(value, path);
    }
  }

  @Override
  public List<Entry> sorted() {
    return list.sorted();
  }
}
