package plyworth.plugins.cost;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plyworth.shared.material.SourceKind;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Text;

/** An input that nobody looked up should not decide the cost unnoticed. */
final class RecalledInput {

  private static final double DOMINATES = 0.25;

  private static final Set<SourceKind> LOOKED_UP =
      Set.of(SourceKind.PUBLISHED, SourceKind.DERIVED, SourceKind.MEASURED);

  private RecalledInput() {}

  private record Item(String name, double cost, Provenance provenance) {}

  /** A finding when the largest item of the bill, a quarter of it or more, was not looked up. */
  static Optional<Finding> finding(Bill bill, Tariff tariff) {
    double total = bill.cost();
    return items(bill, tariff)
        .max(Comparator.comparingDouble(Item::cost))
        .filter(item -> item.cost() >= DOMINATES * total)
        .filter(item -> !LOOKED_UP.contains(item.provenance().kind()))
        .map(item -> finding(item, item.cost() / total));
  }

  private static Finding finding(Item item, double share) {
    Provenance provenance = item.provenance();
    return new Finding(
        Finding.Level.INFORMS,
        "recalled-input",
        Text.of(
            "finding.recalled-input",
            item.name(),
            100 * share,
            provenance.range().low(),
            provenance.range().high(),
            provenance.unit()),
        provenance.source());
  }

  private static Stream<Item> items(Bill bill, Tariff tariff) {
    Stream<Item> materials =
        bill.materials().stream()
            .filter(m -> m.cost() >= 0)
            .map(
                m ->
                    new Item(
                        tariff.context().material(m.layer()).name(),
                        m.cost(),
                        Provenance.ofPrice(m.layer(), tariff.context())));
    Stream<Item> passes =
        bill.passes().stream()
            .filter(p -> p.machineCost() >= 0)
            .map(
                p ->
                    new Item(
                        p.process().name(),
                        p.machineCost(),
                        Provenance.ofFigure(p.process(), PassFigure.HOUR_RATE)));
    return Stream.concat(materials, passes);
  }
}
