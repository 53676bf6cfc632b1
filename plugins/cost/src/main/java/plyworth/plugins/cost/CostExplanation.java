package plyworth.plugins.cost;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** The breakdown behind a price, from the whole to the parts. */
final class CostExplanation {

  private CostExplanation() {}

  /**
   * The breakdown.
   *
   * @param packsPerMinute per lane; NaN when unknown
   */
  static Explanation of(Structure structure, Tariff tariff, double packsPerMinute) {
    Bill bill = Bill.of(structure, tariff, tariff.brief().order().packs());
    List<Section> sections = new ArrayList<>();
    sections.add(PriceSections.shares(bill, tariff, packsPerMinute));
    sections.add(PriceSections.layout(tariff));
    sections.add(PassTables.passes(bill));
    sections.add(PassTables.rates(bill));
    sections.add(MaterialTable.of(bill, tariff));
    sections.add(PriceSections.orderSizes(structure, tariff, packsPerMinute));
    sections.add(PriceSections.fixedAndVariable(structure, tariff));
    sections.add(PriceSections.swings(structure, tariff));
    for (String caution : List.of("screening", "currency", "process-figures")) {
      sections.add(new Note(Text.of("caution." + caution), Text.of("caution.basis")));
    }
    return new Explanation(sections);
  }
}
