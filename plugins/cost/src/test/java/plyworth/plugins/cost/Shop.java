package plyworth.plugins.cost;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.ProcessRole;

/** Materials and processes with test values. */
final class Shop {

  private Shop() {}

  /** The materials of the worked orders. */
  static MaterialLibrary materials() {
    return MaterialLibrary.of(
        List.of(
            material("paper", 750, 1.25, "web", "paper"),
            material("ink", 1000, 5.50, "ink"),
            material("ldpe", 920, 1.35, "resin", "web"),
            material("lldpe", 920, 1.35, "web"),
            material("hdpe", 950, 1.35, "web"),
            material("foil", 2700, 6.00, "web", "foil"),
            material("pet", 1400, 2.45, "web", "film"),
            material("pet-met", 1400, 3.10, "web", "film"),
            material("bopp", 905, 2.20, "web", "film"),
            material("opp-chart", 906, 2.20, "web", "film"),
            material("pa", 1160, 4.20, "web", "film"),
            material("adhesive", 1100, 5.50, "adhesive")));
  }

  /** A material of a density in kg/m³ and a price in EUR/kg. */
  static Material material(String id, double density, double price, String... kinds) {
    return new Material(
        id,
        id,
        "test",
        Set.of(kinds),
        "film",
        List.of(),
        Map.of(
            Material.DENSITY,
            figure(Material.DENSITY, "kg/m3", density),
            Tariff.PRICE,
            figure(Tariff.PRICE, "EUR/kg", price)),
        "");
  }

  /** The plant of the worked foil route. */
  static ProcessLibrary plant() {
    return new ProcessLibrary(
        Map.of(
            "press", press(1.5, 800, 0.03, 300, 0.85, 280),
            "lamination",
                process(
                    "lamination",
                    ProcessRole.BOND,
                    pass(1.0, 500, 0.025, 250, 0.85, 350, "edge-factor", 1.05)),
            "coating",
                process(
                    "coating",
                    ProcessRole.COATING,
                    pass(0.75, 400, 0.02, 250, 0.85, 350, "edge-factor", 1.05)),
            "glue", process("glue", ProcessRole.BOND, pass(0.5, 200, 0.015, 350, 0.85, 180)),
            "slitting",
                process("slitting", ProcessRole.FINISHING, pass(0.5, 50, 0.015, 350, 0.60, 110))));
  }

  private static Process press(
      double setup, double setupWaste, double waste, double speed, double efficiency, double rate) {
    Map<String, Double> figures = pass(setup, setupWaste, waste, speed, efficiency, rate);
    figures.put("tooling-per-colour", 350.0);
    figures.put("tool-life", 1e12);
    figures.put("ink-solids", 0.35);
    return process("press", ProcessRole.PRINT, figures);
  }

  /** Figures of a pass; then further figure ids, each followed by its figure. */
  private static Map<String, Double> pass(
      double setup,
      double setupWaste,
      double waste,
      double speed,
      double efficiency,
      double rate,
      Object... more) {
    Map<String, Double> figures = new TreeMap<>();
    figures.put("setup-time", setup);
    figures.put("setup-waste", setupWaste);
    figures.put("running-waste", waste);
    figures.put("speed", speed);
    figures.put("efficiency", efficiency);
    figures.put("hour-rate", rate);
    for (int i = 0; i < more.length; i += 2) {
      figures.put((String) more[i], (Double) more[i + 1]);
    }
    return figures;
  }

  static Process process(String id, ProcessRole role, Map<String, Double> figures) {
    Map<String, Property> properties = new TreeMap<>();
    figures.forEach((figure, x) -> properties.put(figure, figure(figure, "", x)));
    return new Process(id, id, role, properties, "");
  }

  /** The process with one figure put in place of another. */
  static Process with(Process process, String figureId, double figure) {
    Map<String, Property> figures = new TreeMap<>(process.figures());
    figures.put(figureId, figure(figureId, "", figure));
    return new Process(process.id(), process.name(), process.role(), figures, process.note());
  }

  private static Property figure(String id, String unit, double figure) {
    Sourced sourced =
        new Sourced(
            Double.NaN, Range.exactly(figure), SourceKind.MEASURED, "test value of a worked order");
    return new Property(id, unit, List.of(sourced));
  }
}
