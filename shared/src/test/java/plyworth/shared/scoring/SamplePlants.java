package plyworth.shared.scoring;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.plant.AmountSpan;
import plyworth.shared.plant.BoughtWeb;
import plyworth.shared.plant.Charge;
import plyworth.shared.plant.MinimumOrder;
import plyworth.shared.plant.Plant;
import plyworth.shared.plant.Span;
import plyworth.shared.plant.WorkCentre;

/** An invented plant that between its machines, services and webs knows every limit. */
public final class SamplePlants {

  private static final Span USUAL = new Span(400, 1300);

  private SamplePlants() {}

  /** Two water-based presses, one extrusion line, a laminator; gravure and lacquer are sent out. */
  public static Plant mill() {
    return new Plant(
        "Mill by the weir",
        List.of(
            centre("narrow-press", 800, List.of(), List.of(), 6, 1, "flexo-water"),
            centre("film-press", 1300, amounts("12 to 40 um"), List.of(), 8, 2, "flexo-water"),
            centre("wide-press", 1300, amounts("35 to 80 g/m2"), List.of(), 8, 3, "flexo-water"),
            centre(
                "extruder",
                1300,
                amounts("6 to 80 um", "30 to 120 g/m2"),
                amounts("10 to 40 um"),
                0,
                2,
                "extrusion-lamination",
                "extrusion-coating"),
            centre("laminator", 1300, List.of(), amounts("1 to 4 g/m2"), 0, 4, "solventless"),
            centre("slitter", 1300, List.of(), List.of(), 0, 1, "slitting"),
            service("gravure-house", "30 to 90 g/m2", 600, 55, 12, "gravure-solvent"),
            service("film-printer", "12 to 40 um", 900, 60, 14, "gravure-solvent"),
            service("lacquerer", "6 to 40 um", 400, 40, 9, "lacquering", "wash-priming")),
        List.of(
            web("kraft-paper", "40 to 70 g/m2", 2000, 21, true),
            web("clay-coated-paper", "45 g/m2", 3000, 28, true),
            web("aluminium-foil", "6.35 to 12 um", 500, 42, true),
            web("bopet", "12 um", 0, 14, true),
            web("bopet-met", "12 um", 300, Double.NaN, true),
            web("bopp", "15 to 30 um", 1000, 14, true),
            web("bopp-met", "18 um", 500, 21, false),
            new BoughtWeb(
                "ldpe",
                "",
                List.of(new Span(1000, 1000), new Span(1200, 1200)),
                amounts("20 to 60 um"),
                new MinimumOrder(20_000, MinimumOrder.By.M2),
                10,
                true,
                ""),
            new BoughtWeb(
                "lldpe", "", List.of(USUAL), amounts("40 um"), MinimumOrder.UNKNOWN, 10, true, ""),
            new BoughtWeb(
                "evoh-32",
                "coextruded",
                List.of(USUAL),
                amounts("3 to 6 um"),
                new MinimumOrder(0, MinimumOrder.By.KG),
                30,
                true,
                "part of a film of five")),
        "All invented.");
  }

  private static WorkCentre centre(
      String id,
      double widest,
      List<AmountSpan> webs,
      List<AmountSpan> layers,
      int stations,
      double days,
      String... processes) {
    return new WorkCentre(
        id,
        id,
        Set.of(processes),
        new Span(400, widest),
        webs,
        layers,
        stations,
        false,
        days,
        Optional.empty(),
        "");
  }

  private static WorkCentre service(
      String id, String webs, double setup, double rate, double days, String... processes) {
    return new WorkCentre(
        id,
        id,
        Set.of(processes),
        USUAL,
        amounts(webs),
        List.of(),
        8,
        true,
        days,
        Optional.of(new Charge(setup, rate)),
        "");
  }

  private static BoughtWeb web(
      String material, String gauges, double minimumKg, double leadDays, boolean approved) {
    return new BoughtWeb(
        material,
        "",
        List.of(USUAL),
        amounts(gauges),
        new MinimumOrder(minimumKg, MinimumOrder.By.KG),
        leadDays,
        approved,
        "");
  }

  private static List<AmountSpan> amounts(String... spans) {
    return List.of(spans).stream().map(AmountSpan::read).toList();
  }
}
