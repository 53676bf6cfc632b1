package plyworth.workbench.desktop.brief;

import java.time.Year;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.ClimateZones;
import plyworth.shared.brief.KnownProduct;
import plyworth.shared.brief.Machine;
import plyworth.shared.brief.Market;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.Order;
import plyworth.shared.brief.Pack;
import plyworth.shared.brief.Product;
import plyworth.shared.brief.ProductLibrary;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.NeighbourRules;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Decision;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.desktop.word.Words;

/**
 * What a new study begins with when nothing else is at hand: printed paper on foil or film, as it
 * is made for sticks and sachets, and the usual figures of a stick line (common practice).
 */
public final class PaperLaminate {

  private PaperLaminate() {}

  private static List<Position> positions() {
    return List.of(
        position("varnish", "nothing", "overprint-varnish-wb 1 g/m2 @flexo-water"),
        position(
            "print",
            "ink-wb 1.4 g/m2 @flexo-water 45 %",
            "ink-nc 1.4 g/m2 @flexo-solvent 45 %",
            "ink-nc 1.8 g/m2 @gravure-solvent 45 %"),
        position(
            "outer-web",
            "kraft-paper 40 g/m2",
            "kraft-paper 50 g/m2",
            "kraft-paper 60 g/m2",
            "clay-coated-paper 50 g/m2",
            "barrier-paper-wv 60 g/m2",
            "barrier-paper-high 75 g/m2"),
        position("bond", bonds()),
        position(
            "barrier-web",
            "nothing",
            "aluminium-foil 6.35 um !bright-out",
            "aluminium-foil 7 um !bright-out",
            "bopet-met 12 um",
            "bopp-met 18 um",
            "bopet-alox 12 um",
            "bopet-siox 12 um",
            "mdo-pe-evoh 17 um"),
        position("inner-bond", bonds()),
        position(
            "sealant",
            "nothing",
            "ldpe 15 um @extrusion-coating",
            "ldpe 25 um @extrusion-coating",
            "ldpe 17 um @extrusion-coating / plastomer 8 um @extrusion-coating",
            "eaa 20 um @extrusion-coating",
            "ionomer 20 um @extrusion-coating",
            "mlldpe 30 um",
            "mlldpe 40 um",
            "cpp 25 um"));
  }

  /** The study, without a title. */
  public static Study study() {
    return new Study(
        "",
        "",
        brief(),
        positions(),
        NeighbourRules.standard(),
        LayerNotation.readStructure(
            "ink-nc 1.8 g/m2 @gravure-solvent 45 % / kraft-paper 50 g/m2"
                + " / ldpe 12 um @extrusion-lamination / aluminium-foil 7 um !bright-out"
                + " / ldpe 25 um @extrusion-coating"),
        List.of(),
        List.of(
            weighting("balanced", 3, 3, 2, 2, 1),
            weighting("cost", 2, 6, 2, 1, 0.5),
            weighting("protection", 6, 1.5, 3, 1, 0.5),
            weighting("sustainability", 2, 1.5, 1, 6, 2)),
        Words.of("laminate.weighting.balanced"),
        Map.of(),
        List.of(),
        Map.of(),
        Study.STANDARD_SEED,
        List.of(),
        List.of(),
        Optional.empty(),
        Results.NONE,
        List.of(),
        Decision.OPEN,
        "");
  }

  private static String[] bonds() {
    return new String[] {
      "nothing",
      "ldpe 12 um @extrusion-lamination",
      "eaa 12 um @extrusion-lamination",
      "adhesive-pu-solventless 1.8 g/m2 @solventless",
      "adhesive-pu-solvent 3 g/m2 @dry-bond"
    };
  }

  private static Position position(String place, String... options) {
    return new Position(
        Words.of("laminate.position." + place),
        Arrays.stream(options).map(PaperLaminate::option).toList());
  }

  private static Option option(String text) {
    return text.equals("nothing")
        ? Option.NOTHING
        : new Option(LayerNotation.readStructure(text).layers());
  }

  private static Weighting weighting(
      String by, double margin, double cost, double window, double grade, double solvent) {
    return new Weighting(
        Words.of("laminate.weighting." + by),
        Map.of(
            "barrier/margin", margin,
            "cost/packed-per-1000", cost,
            "machinability/seal-window", window,
            "recyclability/class", grade,
            "print-method/solvent-emitted", solvent));
  }

  private static Brief brief() {
    int launch = Year.now().getValue() + 1;
    return new Brief(
        product(),
        ClimateZones.require("II"),
        365,
        new Pack(Pack.Format.STICK, 25, 120, 8, 7, 3),
        machine(),
        new Market("eu", launch, launch + 9),
        new Order(1_000_000, 3, 4, 1060, 10));
  }

  private static Product product() {
    KnownProduct powder = ProductLibrary.standard().find("seasoning-powder").orElseThrow();
    double room = ClimateZones.require("II").temperatureC();
    MoistureLimit limit = new MoistureLimit(powder, 7.7, 0.25, powder.criticalActivity(room));
    return new Product(
        Words.of("form.known.seasoning-powder"),
        Product.Form.POWDER,
        8,
        Set.of("fines"),
        Optional.of(limit),
        Optional.empty(),
        Optional.empty());
  }

  private static Machine machine() {
    return new Machine(
        Words.of("laminate.machine"),
        8,
        150,
        8,
        3000,
        0.4,
        Machine.SealZone.ONE_ON_TWO,
        0.5,
        10,
        0.15,
        1.25,
        0.05,
        55,
        60,
        0.8,
        0.02);
  }
}
