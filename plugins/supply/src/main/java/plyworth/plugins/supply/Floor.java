package plyworth.plugins.supply;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.plant.Plant;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.Route;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

/**
 * The shop floor for one order: who runs each process.
 *
 * @param context brief, libraries, parameters and draw
 * @param plant the plant
 * @param demand what the order asks
 * @param runners who runs each process, by process id
 */
record Floor(ScoringContext context, Plant plant, Demand demand, Map<String, Runners> runners) {

  static Floor of(ScoringContext context, Plant plant) {
    Demand demand = Demand.of(context);
    Map<String, Runners> runners = new LinkedHashMap<>();
    for (Process process : context.processes().processes().values()) {
      runners.put(process.id(), Runners.of(process, plant, context, demand));
    }
    return new Floor(context, plant, demand, runners);
  }

  /** Who runs the last pass of every route. */
  Runners slitting() {
    return runners.get(ProcessLibrary.SLITTING);
  }

  /** The process of the pass that a layer calls for, or of the one it enters with its neighbour. */
  Optional<Runners> entered(Layer layer, Layer outer) {
    return Route.passAt(layer, outer, context.processes())
        .or(() -> Route.sharedPass(layer, outer, context.processes()))
        .map(process -> runners.get(process.id()));
  }

  /** Whether a layer calls for a pass. */
  boolean callsForPass(Layer layer, Layer outer) {
    return Route.passAt(layer, outer, context.processes()).isPresent();
  }
}
