package plyworth.plugins.barrier.permeation;

import plyworth.plugins.barrier.leak.Channel;
import plyworth.plugins.barrier.leak.Gas;
import plyworth.shared.scoring.ScoringContext;

/**
 * Open channels in the seals of a pack, all alike.
 *
 * @param count how many a pack has; 0 for a tight one, between for one pack in several
 * @param channel their size
 */
public record Leaks(double count, Channel channel) {

  private static final double MICROMETRES_PER_MM = 1000;

  /** The leaks that the user assumes; a channel without a length runs across the seal. */
  public static Leaks of(ScoringContext context) {
    double length = context.parameter(BarrierParameters.LEAK_LENGTH);
    double across = length == 0 ? context.brief().pack().sealWidthMm() : length;
    double diameter = context.parameter(BarrierParameters.LEAK_DIAMETER);
    return new Leaks(
        context.parameter(BarrierParameters.LEAKS_PER_PACK),
        new Channel(diameter, across * MICROMETRES_PER_MM));
  }

  /** Whether there are any. */
  public boolean any() {
    return count > 0;
  }

  /** Conductance of all of them, amount/(day·force). */
  public double conductance(Permeant permeant, double celsius) {
    return any() ? count * one(permeant, celsius) : 0;
  }

  /** Conductance of one. */
  public double one(Permeant permeant, double celsius) {
    return switch (permeant) {
      case OXYGEN -> Gas.OXYGEN.cm3PerDayAndBar(channel, celsius);
      case WATER -> Gas.WATER.gramsPerDayAndPascal(channel, celsius);
      case ALCOHOL -> vapour(Gas.ISOPROPANOL, Alcohol.ISOPROPANOL, celsius);
      case ETHANOL -> vapour(Gas.ETHANOL, Alcohol.ETHANOL, celsius);
    };
  }

  /** Per unit of activity: at the vapour pressure of the pure liquid. */
  private double vapour(Gas gas, Alcohol alcohol, double celsius) {
    return gas.gramsPerDayAndPascal(channel, celsius) * alcohol.antoine().pascal(celsius);
  }
}
