package plyworth.plugins.cost;

import java.util.List;
import plyworth.shared.data.Choice;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** The materials of a bill as a table. */
final class MaterialTable {

  private MaterialTable() {}

  /** Grammage, mass bought, price and its source, and cost of every material. */
  static Table of(Bill bill, Tariff tariff) {
    List<List<Object>> rows = bill.materials().stream().map(item -> row(item, tariff)).toList();
    return new Table(
        Text.of("materials.title"),
        PassTables.columns(
            "layer",
            "grammage",
            "solids",
            "edge-factor",
            "bought",
            "price",
            "cost",
            "kind",
            "source"),
        rows,
        Text.of("materials.basis"));
  }

  private static List<Object> row(Bill.MaterialItem item, Tariff tariff) {
    Provenance provenance = Provenance.ofPrice(item.layer(), tariff.context());
    return List.of(
        item.layer().toString(),
        item.grammage(),
        tariff.solids(item.layer()),
        tariff.edgeFactor(item.layer()),
        item.boughtKg(),
        item.price(),
        item.cost(),
        Choice.plain(provenance.kind()),
        provenance.source());
  }
}
