package plyworth.plugins.cost;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Explanation.Bars;
import plyworth.shared.scoring.Explanation.Curves;
import plyworth.shared.scoring.Explanation.Series;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** What a price is made of and what moves it. */
final class PriceSections {

  /** Order sizes shown, as multiples of the order of the brief. */
  private static final List<Double> MULTIPLES = List.of(0.1, 0.25, 0.5, 1.0, 2.0, 5.0);

  /** Share of set-up and tools in the price that an order should not exceed, common practice. */
  private static final double FIXED_SHARE = 0.1;

  private static final int STRONGEST = 10;

  private PriceSections() {}

  /** Bars of the cost of 1000 good packs, EUR. */
  static Bars shares(Bill bill, Tariff tariff, double packsPerMinute) {
    List<String> labels = new ArrayList<>();
    List<Double> lengths = new ArrayList<>();
    double perThousand = 1000 / bill.packs();
    for (Bill.MaterialItem item : bill.materials()) {
      labels.add(label(item.layer(), tariff));
      lengths.add(item.cost() * perThousand);
    }
    for (Bill.PassItem pass : bill.passes()) {
      labels.add(pass.process().name());
      lengths.add(pass.machineCost() * perThousand);
    }
    FillingLine line = new FillingLine(tariff.brief().machine());
    double film = bill.pricePerThousand();
    double filling = line.perThousand(packsPerMinute);
    labels.addAll(List.of("tools", "freight", "margin", "filling line", "packing waste"));
    lengths.add(bill.tooling() * perThousand);
    lengths.add(bill.freight() * perThousand);
    lengths.add(film - bill.cost() * perThousand);
    lengths.add(filling);
    lengths.add(line.perThousandGood(film, filling) - film - filling);
    return new Bars(
        Text.of("shares.title"), "EUR", labels, lengths, Text.of("shares.basis", packsPerMinute));
  }

  private static String label(Layer layer, Tariff tariff) {
    String amount = BigDecimal.valueOf(layer.amount()).stripTrailingZeros().toPlainString();
    String unit = layer.unit().unit().symbol();
    return tariff.context().material(layer).name() + " " + amount + " " + unit;
  }

  /** Lanes, layout efficiency and area of the order. */
  static Table layout(Tariff tariff) {
    double packs = tariff.brief().order().packs();
    List<Object> row =
        List.of(
            tariff.brief().order().motherWebMm(),
            tariff.brief().pack().laneWidthMm(),
            tariff.brief().pack().repeatMm(),
            (double) tariff.brief().lanesAcrossWeb(),
            tariff.brief().layoutEfficiency(),
            packs * tariff.brief().pack().filmAreaM2(),
            tariff.slitM2(packs));
    return new Table(
        Text.of("layout.title"),
        PassTables.columns(
            "mother-web",
            "lane-width",
            "repeat",
            "lanes",
            "layout-efficiency",
            "net-area",
            "slit-area"),
        List.of(row),
        Text.of("layout.basis"));
  }

  /** Price of the film and cost of a good pack from a tenth to five times the order. */
  static Curves orderSizes(Structure structure, Tariff tariff, double packsPerMinute) {
    FillingLine line = new FillingLine(tariff.brief().machine());
    double filling = line.perThousand(packsPerMinute);
    List<Double> sizes = new ArrayList<>();
    List<Double> film = new ArrayList<>();
    List<Double> packed = new ArrayList<>();
    for (double multiple : MULTIPLES) {
      double packs = multiple * tariff.brief().order().packs();
      double price = Bill.of(structure, tariff, packs).pricePerThousand();
      sizes.add(packs);
      film.add(price);
      packed.add(line.perThousandGood(price, filling));
    }
    return new Curves(
        Text.of("order-sizes.title"),
        Text.of("order-sizes.x"),
        Text.of("order-sizes.y"),
        List.of(
            new Series(Text.of("order-sizes.film"), sizes, film),
            new Series(Text.of("order-sizes.packed"), sizes, packed)),
        Text.of("order-sizes.basis"));
  }

  /** Fixed and variable part of the price, and the order from which set-up weighs little. */
  static Table fixedAndVariable(Structure structure, Tariff tariff) {
    double packs = tariff.brief().order().packs();
    OrderSize size = OrderSize.of(structure, tariff, packs);
    List<Object> row =
        List.of(
            size.fixed(),
            size.variable() * 1000,
            size.elasticity(packs),
            size.smallestOrder(FIXED_SHARE));
    return new Table(
        Text.of("order-size.title"),
        PassTables.columns("fixed", "variable", "elasticity", "smallest-order"),
        List.of(row),
        Text.of("order-size.basis"));
  }

  /** The uncertain inputs that move the price most. */
  static Table swings(Structure structure, Tariff tariff) {
    List<List<Object>> rows = new ArrayList<>();
    for (Sensitivity.Swing swing : Sensitivity.of(structure, tariff)) {
      if (rows.size() < STRONGEST) {
        rows.add(
            List.of(
                swing.input(),
                swing.range().low(),
                swing.range().high(),
                swing.atLow(),
                swing.atHigh()));
      }
    }
    return new Table(
        Text.of("swings.title"),
        PassTables.columns("input", "low", "high", "price-at-low", "price-at-high"),
        rows,
        Text.of("swings.basis"));
  }
}
