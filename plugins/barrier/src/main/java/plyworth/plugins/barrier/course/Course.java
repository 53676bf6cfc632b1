package plyworth.plugins.barrier.course;

import java.util.ArrayList;
import java.util.List;

/**
 * What builds up in a product over time.
 *
 * @param unit unit of the amounts and of the limit, plain spelling
 * @param limit the limit
 * @param days days after filling, ascending
 * @param amounts what has built up, as many; straight between the days
 */
public record Course(String unit, double limit, List<Double> days, List<Double> amounts) {

  /** Two courses that end at one limit may miss it by this share of the way. */
  private static final double ROUNDING = 1e-9;

  /** Copies the lists. */
  public Course {
    days = List.copyOf(days);
    amounts = List.copyOf(amounts);
  }

  /** The last day it was followed to. */
  double end() {
    return days.get(days.size() - 1);
  }

  /** The amount on a day; the last one known on any later day. */
  public double after(double day) {
    int i = 0;
    while (i < days.size() && days.get(i) < day) {
      i++;
    }
    if (i == 0 || i == days.size()) {
      return amounts.get(Math.min(i, days.size() - 1));
    }
    double share = (day - days.get(i - 1)) / (days.get(i) - days.get(i - 1));
    return amounts.get(i - 1) + share * (amounts.get(i) - amounts.get(i - 1));
  }

  /** The first day on which an amount is reached, on the way to the limit; infinite if never. */
  public double dayOf(double amount) {
    double way = Math.signum(limit - amounts.get(0));
    double rounding = ROUNDING * Math.abs(limit - amounts.get(0));
    for (int i = 0; i < days.size(); i++) {
      if (way * (amounts.get(i) - amount) >= -rounding) {
        return i == 0 ? days.get(0) : between(i, amount);
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private double between(int i, double amount) {
    double before = amounts.get(i - 1);
    double share = (amount - before) / (amounts.get(i) - before);
    return days.get(i - 1) + share * (days.get(i) - days.get(i - 1));
  }

  /** Collects a course day by day. */
  static final class Track {
    private final List<Double> days = new ArrayList<>();
    private final List<Double> amounts = new ArrayList<>();

    /** The next point. */
    void add(double day, double amount) {
      days.add(day);
      amounts.add(amount);
    }

    /** All points so far. */
    Course course(String unit, double limit) {
      return new Course(unit, limit, days, amounts);
    }
  }
}
