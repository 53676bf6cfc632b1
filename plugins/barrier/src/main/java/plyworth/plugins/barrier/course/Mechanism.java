package plyworth.plugins.barrier.course;

import java.util.List;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.Permeant;

/**
 * One way in which the product reaches its limit.
 *
 * @param permeant what passes
 * @param balance how it moves the product towards the limit
 */
public record Mechanism(Permeant permeant, Balance balance) {

  /** Whether any pack could be the one that fails. */
  public boolean canLimit() {
    return balance.canLimit();
  }

  /** Days until the limit in a pack; never, whatever the pack, where the climate does not drive. */
  public Life life(PackConductance pack) {
    return canLimit() ? balance.life(pack) : Life.of(Double.POSITIVE_INFINITY);
  }

  /** What must be known of the layers. */
  public List<Permeant> permeants() {
    return permeant.alcohol() ? List.of(permeant, Permeant.WATER) : List.of(permeant);
  }

  /** What crosses the pack per day when it is filled: mg of water or alcohol, cm³ of oxygen. */
  public double perDay(double conductance) {
    double rate = balance.rateAtFirst(conductance);
    return permeant == Permeant.OXYGEN ? rate : 1000 * rate;
  }

  /** Unit of {@link #perDay}, plain spelling. */
  public String unitPerDay() {
    return permeant == Permeant.OXYGEN ? "cm3/day" : "mg/day";
  }

  /** The word for it, also the last part of the keys of its texts. */
  public String word() {
    return switch (permeant) {
      case OXYGEN -> "oxygen";
      case WATER -> "moisture";
      case ALCOHOL, ETHANOL -> "volatile";
    };
  }

  /** The source behind the balance. */
  public String source() {
    return switch (permeant) {
      case OXYGEN -> "oxygen balance of the pack; series model: Polymer Journal 36 (2004) 386";
      case WATER ->
          "sorption balance of the pack, from memory; series model: Polymer Journal 36 (2004) 386";
      case ALCOHOL, ETHANOL ->
          "Antoine and Wilson equations, from memory; series model: Polymer Journal 36 (2004) 386";
    };
  }
}
