package plyworth.workbench.desktop.brief;

import java.util.Optional;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Market;
import plyworth.shared.brief.Order;
import plyworth.shared.brief.Pack;
import plyworth.workbench.desktop.word.Words;

/** Market and order in the form. */
final class MarketEntries {

  private static final String REGION = "[a-z][a-z-]*";

  private MarketEntries() {}

  static void write(Brief brief, BriefDraft.Writing draft) {
    Market market = brief.market();
    Order order = brief.order();
    draft
        .put(BriefField.REGION, market.region())
        .put(BriefField.LAUNCH_YEAR, market.launchYear())
        .put(BriefField.END_YEAR, market.endYear())
        .put(BriefField.ORDER_SIZE, order.packs())
        .put(BriefField.ORDERS, order.orders())
        .put(BriefField.NEW_COLOURS, order.newColours())
        .put(BriefField.MOTHER_WEB, order.motherWebMm())
        .put(BriefField.EDGE_TRIM, order.edgeTrimMm());
  }

  static Optional<Market> market(BriefAnswers answers) {
    return answers.made(
        BriefField.END_YEAR,
        () -> {
          String region = answers.words(BriefField.REGION);
          if (!region.isEmpty() && !region.matches(REGION)) {
            answers.fault(BriefField.REGION, Words.of("form.region.wrong", region));
          }
          int launch = answers.whole(BriefField.LAUNCH_YEAR);
          int end = answers.whole(BriefField.END_YEAR);
          if (end < launch) {
            answers.fault(
                BriefField.END_YEAR, Words.of("form.ends-early", Integer.toString(launch)));
          }
          return new Market(region, launch, end);
        });
  }

  static Optional<Order> order(BriefAnswers answers, Optional<Pack> pack) {
    return answers.made(
        BriefField.ORDER_SIZE,
        () -> {
          double web = answers.figure(BriefField.MOTHER_WEB);
          double trim = answers.figure(BriefField.EDGE_TRIM);
          pack.filter(p -> p.laneWidthMm() > web - 2 * trim)
              .ifPresent(p -> answers.fault(BriefField.MOTHER_WEB, tooNarrow(p, web - 2 * trim)));
          return new Order(
              answers.figure(BriefField.ORDER_SIZE),
              answers.figure(BriefField.ORDERS),
              answers.figure(BriefField.NEW_COLOURS),
              web,
              trim);
        });
  }

  private static String tooNarrow(Pack pack, double usable) {
    return Words.of(
        "form.no-lane", Measure.LENGTH.write(pack.laneWidthMm()), Measure.LENGTH.write(usable));
  }
}
