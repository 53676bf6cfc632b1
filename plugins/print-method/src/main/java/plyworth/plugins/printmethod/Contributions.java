package plyworth.plugins.printmethod;

import java.util.Map;
import java.util.Optional;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** Works out what each layer adds, from it and its outer neighbour alone. */
record Contributions(Plant plant, Map<String, WetProcess> processes, Gates gates) {

  static Contributions of(Plant plant) {
    Map<String, WetProcess> processes = WetProcess.all(plant);
    return new Contributions(plant, processes, new Gates(plant, processes));
  }

  /** The sum over a whole structure. */
  Contribution of(Structure structure) {
    Contribution sum = Contribution.NOTHING;
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      sum = sum.then(of(layer, outer));
      outer = layer;
    }
    return sum;
  }

  /** What one layer adds; {@code outer} is null for the outermost. */
  Contribution of(Layer layer, Layer outer) {
    Optional<Printed> printed = Printed.at(layer, outer, plant.context());
    long bits = printed.map(p -> SuitabilityBits.of(p, gates.worst(p))).orElse(0L);
    double web = printed.map(this::webEnergy).orElse(0.0);
    WetProcess by = processes.get(layer.process());
    if (by == null) {
      return new Contribution(0, 0, 0, 0, web, bits, false);
    }
    LayDown down = layDown(layer, by);
    double emitted = down.emitted(plant.retained());
    if (!by.print()) {
      return new Contribution(down.solvent(), emitted, 0, 0, web, bits, false);
    }
    double energy = web + layerEnergy(down) + (firstOfPass(layer, outer) ? by.perPass() : 0);
    return new Contribution(
        down.solvent(), emitted, down.water(), down.dry(), energy, bits, exposed(layer));
  }

  /** How a layer is put down by a wet process. */
  LayDown layDown(Layer layer, WetProcess by) {
    return new LayDown(layer, by, plant.context().grammage(layer));
  }

  /** Dryer energy for evaporation and exhaust air, kWh per 1000 m². */
  double layerEnergy(LayDown down) {
    return plant.dryerEnergy(down.latentHeat(plant.drying()) + down.airHeat(plant.drying()));
  }

  /** Dryer energy that warms the printed web, kWh per 1000 m²; 0 where no hot air dries. */
  double webEnergy(Printed printed) {
    boolean hotAir =
        processes.get(printed.ink().process()).method().drying() == Method.Means.HOT_AIR;
    if (!hotAir || printed.provisional() || printed.surface().face().equals("primer")) {
      return 0;
    }
    double capacity = plant.context().property(printed.web(), "heat-capacity");
    double grammage = plant.context().grammage(printed.web());
    return plant.dryerEnergy(plant.drying().webHeat(grammage, capacity));
  }

  /** Whether a print layer starts a pass through its press. */
  static boolean firstOfPass(Layer layer, Layer outer) {
    return outer == null || !outer.process().equals(layer.process());
  }

  private boolean exposed(Layer layer) {
    return !plant.context().kinds(layer).contains("sealable");
  }
}
