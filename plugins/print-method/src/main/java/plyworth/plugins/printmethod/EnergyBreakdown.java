package plyworth.plugins.printmethod;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Explanation.Bars;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;

/** Where the drying and curing energy goes. */
record EnergyBreakdown(PrintJob job, Contributions contributions) {

  private static final List<String> LABELS =
      List.of("evaporation", "exhaust air", "warming the web", "curing");

  List<Section> sections() {
    if (!job.printed()) {
      return List.of();
    }
    Plant plant = contributions.plant();
    double latent = 0;
    double air = 0;
    for (LayDown down : job.prints()) {
      latent += plant.dryerEnergy(down.latentHeat(plant.drying()));
      air += plant.dryerEnergy(down.airHeat(plant.drying()));
    }
    double web = job.surfaces().stream().mapToDouble(contributions::webEnergy).sum();
    List<Double> lengths = List.of(latent, air, web, curing());
    return List.of(
        new Bars(
            Text.of("section.energy"),
            "kWh/1000m2",
            new ArrayList<>(LABELS),
            lengths,
            Text.of("section.energy.basis")));
  }

  private double curing() {
    double sum = 0;
    Layer outer = null;
    for (Layer layer : job.structure().layers()) {
      WetProcess by = contributions.processes().get(layer.process());
      if (by != null && Contributions.firstOfPass(layer, outer)) {
        sum += by.perPass();
      }
      outer = layer;
    }
    return sum;
  }
}
