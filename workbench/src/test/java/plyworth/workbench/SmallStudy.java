package plyworth.workbench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.Machine;
import plyworth.shared.brief.Market;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.Order;
import plyworth.shared.brief.Pack;
import plyworth.shared.brief.Product;
import plyworth.shared.store.StudyFile;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.NeighbourRules;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Decision;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Scored;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;

/** An invented stick of ground mint leaves: a few hundred candidates, or millions on demand. */
public final class SmallStudy {

  /** The plugins that come along. */
  public static final PluginCatalog CATALOG =
      PluginCatalog.load(Path.of("target/plyworth/plugins"));

  private static final String BASELINE =
      "ink-nc 1.8 g/m2 @gravure-solvent 45 % / kraft-paper 50 g/m2 / ldpe 12 um"
          + " @extrusion-lamination / aluminium-foil 7 um !bright-out / ldpe 25 um"
          + " @extrusion-coating";

  private SmallStudy() {}

  /** A few hundred candidates, two weightings. */
  public static Study few() {
    return few("nothing", "aluminium-foil 7 um !bright-out", "bopp-met 18 um");
  }

  /** The same with other webs for the barrier. */
  public static Study few(String... barrierWebs) {
    return study(
        List.of(
            position(
                "Print",
                "ink-wb 1.4 g/m2 @flexo-water 45 %",
                "ink-nc 1.8 g/m2 @gravure-solvent 45 %"),
            position(
                "Outer web",
                "kraft-paper 40 g/m2",
                "kraft-paper 45 g/m2",
                "kraft-paper 50 g/m2",
                "kraft-paper 60 g/m2",
                "glassine 50 g/m2"),
            position("Bond", "nothing", "ldpe 12 um @extrusion-lamination"),
            position("Barrier web", barrierWebs),
            position("Inner bond", "nothing", "adhesive-pu-solventless 1.8 g/m2 @solventless"),
            position(
                "Sealant",
                "ldpe 15 um @extrusion-coating",
                "ldpe 20 um @extrusion-coating",
                "ldpe 25 um @extrusion-coating",
                "ldpe 30 um @extrusion-coating",
                "eaa 20 um @extrusion-coating",
                "eaa 25 um @extrusion-coating",
                "mlldpe 30 um")));
  }

  /** The same with so many gauges that scoring takes a while. */
  public static Study many() {
    return study(
        List.of(
            position(
                "Print",
                "ink-wb 1.4 g/m2 @flexo-water 45 %",
                "ink-nc 1.8 g/m2 @gravure-solvent 45 %"),
            position("Outer web", each("kraft-paper # g/m2", 40, 120)),
            position("Bond", each("ldpe # um @extrusion-lamination", 10, 40)),
            position("Barrier web", each("aluminium-foil # um !bright-out", 6, 30)),
            position("Sealant", each("ldpe # um @extrusion-coating", 15, 60))));
  }

  /** A ranked study. */
  public static Ranked ranked(Study study) {
    Compiled compiled = Compiled.of(Prepared.of(study, CATALOG), () -> false);
    return Ranked.of(Scored.of(compiled, Progress.NONE), 50);
  }

  /** Copies an example study into a folder, so that nothing is left beside it. */
  public static Path example(Path folder, String name) {
    Path own = Path.of("..", "studies", name + StudyFile.SUFFIX);
    return file(folder, name, StudyFile.open(own).study());
  }

  /** Writes a study into a folder. */
  public static Path file(Path folder, String name, Study study) {
    Path file = folder.resolve(name + StudyFile.SUFFIX);
    StudyFile.save(file, study, StudyFile.NEW);
    return file;
  }

  private static Study study(List<Position> positions) {
    return new Study(
        "Mint leaf stick",
        "A stick of ground mint leaves lies in paper and foil today. Can the foil go?",
        brief(),
        positions,
        NeighbourRules.standard(),
        LayerNotation.readStructure(BASELINE),
        List.of(),
        List.of(weighting("tea room", 3, 3, 1), weighting("cost-led", 1, 9, 1)),
        "tea room",
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
        "An invented tea room on a ferry sells its own mint.");
  }

  private static Weighting weighting(
      String name, double margin, double cost, double recyclability) {
    return new Weighting(
        name,
        Map.of(
            "barrier/margin", margin,
            "cost/packed-per-1000", cost,
            "recyclability/class", recyclability,
            "machinability/bending-stiffness", 1.0));
  }

  private static Brief brief() {
    return new Brief(
        new Product(
            "ground mint leaves",
            Product.Form.POWDER,
            3,
            Set.of("fines"),
            Optional.of(new MoistureLimit(new Isotherm.Gab(0.060, 1.5, 0.95), 2.9, 0.25, 0.50)),
            Optional.empty(),
            Optional.empty()),
        new Climate("temperate, 23 °C 50 % RH", 23, 50),
        180,
        new Pack(Pack.Format.STICK, 25, 120, 8, 7, 3),
        new Machine(
            "six-lane stick machine",
            6,
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
            0.02),
        new Market("eu", 2027, 2036),
        new Order(400_000, 2, 3, 1060, 10));
  }

  private static Position position(String title, String... options) {
    return new Position(title, Arrays.stream(options).map(SmallStudy::option).toList());
  }

  private static Option option(String text) {
    return text.equals("nothing")
        ? Option.NOTHING
        : new Option(new ArrayList<>(LayerNotation.readStructure(text).layers()));
  }

  private static String[] each(String pattern, int from, int to) {
    return IntStream.rangeClosed(from, to)
        .mapToObj(amount -> pattern.replace("#", Integer.toString(amount)))
        .toArray(String[]::new);
  }
}
