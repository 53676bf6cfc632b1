package plyworth.shared.brief;

/**
 * What is asked for.
 *
 * @param product what is packed and what harms it
 * @param climate where it is stored
 * @param shelfLifeDays how long it must keep, days
 * @param pack the pack
 * @param machine the filling machine
 * @param market where and when it is sold
 * @param order what is ordered at a time
 * @param handling how hard the pack is treated
 */
public record Brief(
    Product product,
    Climate climate,
    double shelfLifeDays,
    Pack pack,
    Machine machine,
    Market market,
    Order order,
    Handling handling) {

  /** Binary rounding must not cost a lane: 25 lanes of 39.2 mm fill 980 mm exactly. */
  private static final double ROUNDING = 1e-9;

  /**
   * Checks the shelf life and that the lanes fit the mother web.
   *
   * @throws IllegalArgumentException when they do not
   */
  public Brief {
    Check.positive("the shelf life", shelfLifeDays, "days");
    double usable = order.motherWebMm() - 2 * order.edgeTrimMm();
    if (pack.laneWidthMm() > usable) {
      throw new IllegalArgumentException(
          ("one lane of " + pack.laneWidthMm() + " mm does not fit the mother web of ")
              + usable
              + " mm between the trims");
    }
  }

  /** A brief whose packs are shipped as usual. */
  public Brief(
      Product product,
      Climate climate,
      double shelfLifeDays,
      Pack pack,
      Machine machine,
      Market market,
      Order order) {
    this(product, climate, shelfLifeDays, pack, machine, market, order, Handling.SHIPPED);
  }

  /** The same, stored in another climate. */
  public Brief in(Climate other) {
    return new Brief(product, other, shelfLifeDays, pack, machine, market, order, handling);
  }

  /** The same, handled in another way. */
  public Brief handled(Handling other) {
    return new Brief(product, climate, shelfLifeDays, pack, machine, market, order, other);
  }

  /** The same with another number of packs in one order. */
  public Brief ordering(double packs) {
    Order other =
        new Order(
            packs, order.orders(), order.newColours(), order.motherWebMm(), order.edgeTrimMm());
    return new Brief(product, climate, shelfLifeDays, pack, machine, market, other, handling);
  }

  /** Lanes cut from the mother web: a whole number. */
  public int lanesAcrossWeb() {
    double usable = order.motherWebMm() - 2 * order.edgeTrimMm();
    return (int) Math.floor(usable / pack.laneWidthMm() + ROUNDING);
  }

  /** Share of the mother web that becomes packs, from 0 to 1. */
  public double layoutEfficiency() {
    return lanesAcrossWeb() * pack.laneWidthMm() / order.motherWebMm();
  }
}
