package plyworth.plugins.supply;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import plyworth.shared.plant.Plant;
import plyworth.shared.plant.WorkCentre;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

/**
 * Who runs a process for this order, in the order in which they are taken: machines of the plant,
 * the fastest first; then services, the cheapest first.
 *
 * @param process the process
 * @param suited those that the width, the solvent and the colours of the order leave
 * @param costs what each of them asks for a pass, EUR; 0 in the plant
 * @param ruledOut the others that run the process, with what they lack
 * @param context libraries
 * @param demand what the order asks
 */
record Runners(
    Process process,
    List<WorkCentre> suited,
    double[] costs,
    Map<WorkCentre, List<Snag>> ruledOut,
    ScoringContext context,
    Demand demand) {

  static Runners of(Process process, Plant plant, ScoringContext context, Demand demand) {
    List<WorkCentre> suited = new ArrayList<>();
    Map<WorkCentre, List<Snag>> ruledOut = new LinkedHashMap<>();
    for (WorkCentre centre : plant.centres()) {
      if (centre.processes().contains(process.id())) {
        List<Snag> snags = Snag.ofOrder(centre, process, demand);
        if (snags.isEmpty()) {
          suited.add(centre);
        } else {
          ruledOut.put(centre, snags);
        }
      }
    }
    suited.sort(
        Comparator.comparing(WorkCentre::outside)
            .thenComparingDouble(c -> cost(c, demand))
            .thenComparingDouble(WorkCentre::days));
    double[] costs = suited.stream().mapToDouble(c -> cost(c, demand)).toArray();
    return new Runners(process, List.copyOf(suited), costs, ruledOut, context, demand);
  }

  private static double cost(WorkCentre centre, Demand demand) {
    return centre.charge().map(c -> c.cost(demand.areaM2())).orElse(0.0);
  }

  /** Whether which of them is taken depends on the structure. */
  boolean open() {
    return suited.size() > 1 && suited.stream().anyMatch(this::limited);
  }

  private boolean limited(WorkCentre centre) {
    boolean lastStation =
        process.role() == ProcessRole.PRINT && centre.printStations() < demand.colours() + 1;
    return !centre.webs().isEmpty() || !centre.layers().isEmpty() || lastStation;
  }

  /** What a layer that enters in a pass of this process asks in vain of one of those suited. */
  List<Snag> snags(int centre, Layer layer, Layer outer) {
    return Snag.ofLayer(suited.get(centre), process, layer, outer, demand, context);
  }

  /** Bit by bit which of those suited cannot take a layer that enters in a pass of this process. */
  long excluded(Layer layer, Layer outer) {
    return IntStream.range(0, suited.size())
        .filter(c -> !snags(c, layer, outer).isEmpty())
        .mapToLong(c -> 1L << c)
        .reduce(0, (a, b) -> a | b);
  }

  /** The first that is not excluded; the number of those suited when there is none. */
  int taken(long excluded) {
    return Math.min(suited.size(), Long.numberOfTrailingZeros(~excluded));
  }

  /** Days of a pass; NaN when nobody runs it. */
  double days(int taken) {
    return taken < suited.size() ? suited.get(taken).days() : Double.NaN;
  }

  /** What a pass costs outside, EUR; NaN when nobody runs it. */
  double cost(int taken) {
    return taken < suited.size() ? costs[taken] : Double.NaN;
  }
}
