package plyworth.workbench.desktop.brief;

import java.util.Map;
import java.util.Optional;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Machine;
import plyworth.shared.brief.Market;
import plyworth.shared.brief.Order;
import plyworth.shared.brief.Pack;
import plyworth.shared.brief.Product;
import plyworth.shared.study.Study;

/**
 * What a draft says.
 *
 * @param study the study with the brief and the terms of the draft; empty when something is wrong
 * @param pack the pack; empty when something is wrong with it
 * @param faults what is wrong, by field, in the order of the form
 */
record BriefReading(Optional<Study> study, Optional<Pack> pack, Map<BriefField, String> faults) {

  /** Reads a draft; all that it does not speak of is taken from a study. */
  static BriefReading of(BriefDraft draft, Study base) {
    BriefAnswers answers = new BriefAnswers(draft);
    Optional<Climate> climate = StorageEntries.climate(answers);
    Optional<Product> product = ProductEntries.read(answers, climate);
    Optional<Pack> pack = PackEntries.read(answers);
    Optional<Machine> machine = MachineEntries.read(answers);
    Optional<Market> market = MarketEntries.market(answers);
    Optional<Order> order = MarketEntries.order(answers, pack);
    double shelfLife = answers.figure(BriefField.SHELF_LIFE);
    boolean known = answers.faults().isEmpty();
    Brief brief =
        known
            ? new Brief(
                product.orElseThrow(),
                climate.orElseThrow(),
                shelfLife,
                pack.orElseThrow(),
                machine.orElseThrow(),
                market.orElseThrow(),
                order.orElseThrow(),
                StorageEntries.handling(answers))
            : base.brief();
    Optional<Study> study = TermsEntries.read(answers, base, brief);
    boolean right = answers.faults().isEmpty();
    return new BriefReading(study.filter(s -> right), pack, answers.faults());
  }
}
