package plyworth.workbench.desktop.brief;

import static plyworth.workbench.desktop.brief.Ask.choice;
import static plyworth.workbench.desktop.brief.Ask.count;
import static plyworth.workbench.desktop.brief.Ask.figure;
import static plyworth.workbench.desktop.brief.Ask.notNegative;
import static plyworth.workbench.desktop.brief.Ask.positive;
import static plyworth.workbench.desktop.brief.Ask.words;
import static plyworth.workbench.desktop.brief.BriefSection.MACHINE;
import static plyworth.workbench.desktop.brief.BriefSection.MARKET;
import static plyworth.workbench.desktop.brief.BriefSection.PACK;
import static plyworth.workbench.desktop.brief.BriefSection.PRODUCT;
import static plyworth.workbench.desktop.brief.BriefSection.QUESTION;
import static plyworth.workbench.desktop.brief.BriefSection.STORAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import plyworth.shared.brief.ClimateZones;
import plyworth.shared.brief.Handling;
import plyworth.shared.brief.KnownProduct;
import plyworth.shared.brief.Machine;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.Pack;
import plyworth.shared.brief.Product;
import plyworth.shared.brief.ProductLibrary;
import plyworth.shared.data.Choice;
import plyworth.workbench.desktop.brief.Ask.How;
import plyworth.workbench.desktop.word.Words;

/** Everything that the form of a brief asks, in the order in which it stands there. */
enum BriefField {
  TITLE(words(QUESTION, How.LINE)),
  WHY(words(QUESTION, How.AREA).orNothing().explained()),
  NOTES(words(QUESTION, How.AREA).orNothing().explained()),
  BASELINE(words(QUESTION, How.NOTATION).explained()),
  DEADLINE(positive(QUESTION, Measure.DAYS).orNothing().explained()),
  PRICE(positive(QUESTION, Measure.MONEY).orNothing().explained()),
  PRICE_OF(choice(QUESTION, How.CHOICE, "form.price-of.", Prices.CRITERIA)),

  PRODUCT_NAME(words(PRODUCT, How.LINE)),
  PRODUCT_FORM(choice(PRODUCT, How.CHOICE, "form.product.", plain(Product.Form.values()))),
  PRODUCT_MASS(positive(PRODUCT, Measure.MASS)),
  CONTENTS(
      choice(PRODUCT, How.CHECKS, "form.content.", List.copyOf(new TreeSet<>(Product.CONTENTS)))
          .orNothing()),
  SORPTION(
      choice(
          PRODUCT,
          How.CHOICE,
          "form.sorption.",
          List.of("none", "library", "gab", "linear", "deliquescent"))),
  KNOWN_PRODUCT(
      choice(PRODUCT, How.CHOICE, "form.known.", knownProducts())
          .explained()
          .with(SORPTION, "library")),
  MONOLAYER(positive(PRODUCT, Measure.MOISTURE).with(SORPTION, "gab")),
  GAB_C(positive(PRODUCT, Measure.PLAIN).with(SORPTION, "gab")),
  GAB_K(positive(PRODUCT, Measure.PLAIN).with(SORPTION, "gab")),
  SLOPE(positive(PRODUCT, Measure.MOISTURE).explained().with(SORPTION, "linear")),
  DELIQUESCENCE(figure(PRODUCT, Measure.PLAIN, 0, 1).with(SORPTION, "deliquescent")),
  ALLOWED_UPTAKE(positive(PRODUCT, Measure.MOISTURE).with(SORPTION, "deliquescent")),
  DRY_MASS(
      positive(PRODUCT, Measure.MASS).with(SORPTION, "library", "gab", "linear", "deliquescent")),
  INITIAL_ACTIVITY(
      figure(PRODUCT, Measure.PLAIN, 0, 1)
          .explained()
          .with(SORPTION, "library", "gab", "linear", "deliquescent")),
  CRITICAL_ACTIVITY(
      figure(PRODUCT, Measure.PLAIN, 0, 1)
          .explained()
          .with(SORPTION, "library", "gab", "linear", "deliquescent")),
  SPOILT_BY(
      choice(PRODUCT, How.CHOICE, "brief.spoilt-by.", plain(MoistureLimit.Way.values()))
          .with(SORPTION, "library", "gab", "linear", "deliquescent")),
  OXYGEN(choice(PRODUCT, How.CHOICE, "form.oxygen.", List.of("none", "limit"))),
  OXYGEN_UPTAKE(positive(PRODUCT, Measure.PPM).explained().with(OXYGEN, "limit")),
  OXYGEN_HEADSPACE(figure(PRODUCT, Measure.PERCENT, 0, 100).explained().with(OXYGEN, "limit")),
  VOLATILE(choice(PRODUCT, How.CHOICE, "form.volatile.", List.of("none", "limit")).explained()),
  SUBSTANCE(words(PRODUCT, How.LINE).with(VOLATILE, "limit")),
  MASS_FRACTION(figure(PRODUCT, Measure.SHARE, 0, 1).with(VOLATILE, "limit")),
  CHARGE(positive(PRODUCT, Measure.MASS).with(VOLATILE, "limit")),
  ALLOWED_LOSS(figure(PRODUCT, Measure.PERCENT, 0, 100).with(VOLATILE, "limit")),

  SHELF_LIFE(positive(STORAGE, Measure.DAYS)),
  CLIMATE(
      choice(
          STORAGE, How.CHOICE, "form.climate.", List.of("zone", "constant", "months", "seasons"))),
  ZONE(
      choice(STORAGE, How.CHOICE, "", List.copyOf(ClimateZones.all().keySet()))
          .with(CLIMATE, "zone")),
  CLIMATE_NAME(words(STORAGE, How.LINE).with(CLIMATE, "constant", "months", "seasons")),
  TEMPERATURE(figure(STORAGE, Measure.TEMPERATURE, -40, 70).with(CLIMATE, "constant")),
  HUMIDITY(figure(STORAGE, Measure.PERCENT, 0, 100).with(CLIMATE, "constant")),
  MONTHS(words(STORAGE, How.MONTHS).explained().with(CLIMATE, "months")),
  SEASONS(words(STORAGE, How.LINES).explained().with(CLIMATE, "seasons")),
  HANDLING(choice(STORAGE, How.CHOICE, "brief.handling.", plain(Handling.values())).explained()),

  PACK_FORMAT(choice(PACK, How.CHOICE, "brief.pack.", plain(Pack.Format.values()))),
  PACK_WIDTH(positive(PACK, Measure.LENGTH)),
  PACK_LENGTH(positive(PACK, Measure.LENGTH)),
  SEAL_WIDTH(positive(PACK, Measure.LENGTH)),
  OVERLAP(notNegative(PACK, Measure.LENGTH).with(PACK_FORMAT, "stick", "pillow")),
  HEADSPACE(notNegative(PACK, Measure.VOLUME)),

  MACHINE_NAME(words(MACHINE, How.LINE)),
  LANES(count(MACHINE, 1, 100)),
  JAW(figure(MACHINE, Measure.TEMPERATURE, 20, 350)),
  JAW_SPREAD(figure(MACHINE, Measure.DIFFERENCE, 0, 100)),
  CONTACT(positive(MACHINE, Measure.CONDUCTANCE)),
  DWELL(positive(MACHINE, Measure.SECONDS)),
  SEAL_ZONE(choice(MACHINE, How.CHOICE, "form.zone.", plain(Machine.SealZone.values()))),
  FEED(positive(MACHINE, Measure.SPEED)),
  FEED_ACCELERATION(positive(MACHINE, Measure.ACCELERATION)),
  JAW_TRAVEL(notNegative(MACHINE, Measure.SECONDS)),
  DWELL_FACTOR(figure(MACHINE, Measure.PLAIN, 1, 10)),
  COOLING(notNegative(MACHINE, Measure.SECONDS)),
  FILL_LIMIT(positive(MACHINE, Measure.PER_MINUTE)),
  HOUR_RATE(notNegative(MACHINE, Measure.HOUR_RATE)),
  EFFICIENCY(figure(MACHINE, Measure.SHARE, 1e-6, 1)),
  PACKING_WASTE(figure(MACHINE, Measure.SHARE, 0, 0.99)),

  REGION(words(MARKET, How.LINE).explained()),
  LAUNCH_YEAR(count(MARKET, 1990, 2100)),
  END_YEAR(count(MARKET, 1990, 9999)),
  ORDER_SIZE(positive(MARKET, Measure.PACKS)),
  ORDERS(positive(MARKET, Measure.PLAIN)),
  NEW_COLOURS(notNegative(MARKET, Measure.PLAIN)),
  MOTHER_WEB(positive(MARKET, Measure.LENGTH)),
  EDGE_TRIM(notNegative(MARKET, Measure.LENGTH));

  private final transient Ask ask;

  BriefField(Ask ask) {
    this.ask = ask;
  }

  Ask ask() {
    return ask;
  }

  /** Its name on screen. */
  String title() {
    return Words.of("form.field." + Choice.plain(this));
  }

  private static List<String> plain(Enum<?>[] constants) {
    return Stream.of(constants).map(Choice::plain).toList();
  }

  /** Products of the library whose sorption is known. */
  private static List<String> knownProducts() {
    List<String> known = new ArrayList<>();
    for (KnownProduct product : ProductLibrary.standard().products().values()) {
      if (product.law().isPresent()) {
        known.add(product.id());
      }
    }
    return known;
  }

  /** Criteria that a target price can be a limit on. */
  static final class Prices {

    /** What their full ids begin with. */
    static final String PLUGIN = "cost/";

    /** Their ids, the usual one first. */
    static final List<String> CRITERIA =
        List.of("packed-per-1000", "price-per-1000", "price-per-1000m2");

    private Prices() {}
  }
}
