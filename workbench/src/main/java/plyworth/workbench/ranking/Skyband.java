package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Candidates that fewer than {@code k} others beat under every weight of a cell: the only ones that
 * can be among the first {@code k} there (k-skyband, Papadias and others, ACM Transactions on
 * Database Systems 30(1), 2005; from memory). May hold a few more than these.
 */
final class Skyband {

  /** Values that differ by less may be level: more than rounding can be. */
  static final double LEVEL = 1e-11;

  /** Members that others are compared with; further ones only join. */
  private static final int MOST = 256;

  private final int k;
  private final double[][] corners;
  private final double[] middle;
  private final double[][] compared = new double[MOST][];
  private int count;
  private final List<ValueColumns> members = new ArrayList<>();

  /**
   * Nothing yet.
   *
   * @param corners weights between which the others lie
   * @param middle weights among them, under which the promising are told
   */
  Skyband(int k, double[][] corners, double[] middle) {
    this.k = k;
    this.corners = corners;
    this.middle = middle;
  }

  /** Takes in those of some candidates that belong here. */
  void offer(ValueColumns candidates) {
    ValueColumns left = candidates.only(notBeaten(candidates));
    double[][] worth = worth(left);
    double[] sums = left.under(middle);
    int[] joining =
        IntStream.range(0, left.size())
            .boxed()
            .sorted(Comparator.comparingDouble(item -> -sums[item]))
            .mapToInt(item -> item)
            .filter(item -> joins(at(worth, item)))
            .toArray();
    members.add(left.only(joining));
  }

  /** Which of some candidates, or corners of zones, too few members beat everywhere. */
  int[] notBeaten(ValueColumns candidates) {
    double[][] worth = worth(candidates);
    return IntStream.range(0, candidates.size()).filter(item -> !beaten(at(worth, item))).toArray();
  }

  /** All members. */
  ValueColumns members() {
    return ValueColumns.together(corners[0].length, members);
  }

  private double[][] worth(ValueColumns candidates) {
    double[][] worth = new double[corners.length][];
    for (int i = 0; i < worth.length; i++) {
      worth[i] = candidates.under(corners[i]);
    }
    return worth;
  }

  private static double[] at(double[][] worth, int item) {
    double[] own = new double[worth.length];
    for (int i = 0; i < own.length; i++) {
      own[i] = worth[i][item];
    }
    return own;
  }

  private boolean joins(double[] worth) {
    if (beaten(worth)) {
      return false;
    }
    if (count < MOST) {
      compared[count++] = worth;
    }
    return true;
  }

  /** What beats one often beats the next, so it moves to the front. */
  private boolean beaten(double[] worth) {
    int beating = 0;
    for (int m = 0; m < count; m++) {
      double[] member = compared[m];
      if (beats(member, worth)) {
        compared[m] = compared[beating];
        compared[beating] = member;
        beating++;
        if (beating == k) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean beats(double[] member, double[] other) {
    for (int i = 0; i < other.length; i++) {
      if (member[i] < other[i] + LEVEL) {
        return false;
      }
    }
    return true;
  }
}
