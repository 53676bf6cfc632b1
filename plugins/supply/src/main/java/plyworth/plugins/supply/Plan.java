package plyworth.plugins.supply;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.plant.WorkCentre;
import plyworth.shared.route.Pass;
import plyworth.shared.route.Route;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * How a structure is made in the plant: who runs its passes, and what its webs are.
 *
 * @param passes passes in order, slitting last
 * @param jobs one for each process among the passes, in the same order
 * @param webs webs to be bought, outside first
 */
record Plan(List<Pass> passes, Map<String, Job> jobs, List<Sourcing> webs) {

  /**
   * All passes of one process.
   *
   * @param runners who runs the process for this order
   * @param passes how many there are
   * @param excluded bit by bit which of those suited cannot take the layers
   * @param snags what each of the excluded lacks
   */
  record Job(Runners runners, int passes, long excluded, Map<WorkCentre, List<Snag>> snags) {

    int taken() {
      return runners.taken(excluded);
    }

    /** Who runs them; empty when nobody does. */
    Optional<WorkCentre> centre() {
      return taken() < runners.suited().size()
          ? Optional.of(runners.suited().get(taken()))
          : Optional.empty();
    }

    /** Days of one pass; NaN when nobody runs it. */
    double days() {
      return runners.days(taken());
    }

    /** What one pass costs outside, EUR; NaN when nobody runs it. */
    double cost() {
      return runners.cost(taken());
    }

    /**
     * Who comes nearest of those that run the process and cannot take the job: a machine before a
     * service, with the fewest snags, for the widest web.
     *
     * @param outsideToo whether a service may be named
     */
    Optional<Map.Entry<WorkCentre, List<Snag>>> nearest(boolean outsideToo) {
      Map<WorkCentre, List<Snag>> all = new LinkedHashMap<>(runners.ruledOut());
      snags.forEach(all::putIfAbsent);
      return all.entrySet().stream()
          .filter(e -> outsideToo || !e.getKey().outside())
          .min(
              Comparator.comparing((Map.Entry<WorkCentre, List<Snag>> e) -> e.getKey().outside())
                  .thenComparing(e -> e.getValue().size())
                  .thenComparing(e -> -e.getKey().widthMm().to()));
    }
  }

  static Plan of(Structure structure, Floor floor) {
    List<Pass> passes = Route.of(structure, floor.context().processes()).passes();
    Map<String, Job> jobs = new LinkedHashMap<>();
    for (Pass pass : passes) {
      jobs.computeIfAbsent(pass.process().id(), id -> job(id, passes, structure, floor));
    }
    List<Sourcing> webs = new ArrayList<>();
    for (Layer layer : structure.layers()) {
      if (Sourcing.concerns(layer, floor)) {
        webs.add(Sourcing.of(layer, floor));
      }
    }
    return new Plan(passes, jobs, List.copyOf(webs));
  }

  private static Job job(String process, List<Pass> passes, Structure structure, Floor floor) {
    Runners runners = floor.runners().get(process);
    Map<WorkCentre, List<Snag>> snags = new LinkedHashMap<>();
    long excluded = 0;
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      if (floor.entered(layer, outer).filter(r -> r == runners).isPresent()) {
        for (int c = 0; c < runners.suited().size(); c++) {
          List<Snag> found = runners.snags(c, layer, outer);
          if (!found.isEmpty()) {
            excluded |= 1L << c;
            snags.computeIfAbsent(runners.suited().get(c), k -> new ArrayList<>()).addAll(found);
          }
        }
      }
      outer = layer;
    }
    int count = (int) passes.stream().filter(p -> p.process().id().equals(process)).count();
    return new Job(runners, count, excluded, snags);
  }

  /** Days of all passes; NaN when nobody runs one of them. */
  double passDays() {
    return jobs.values().stream().mapToDouble(j -> j.passes() * j.days()).sum();
  }

  /** Days of the passes that are sent out. */
  double daysOutside() {
    return jobs.values().stream()
        .filter(j -> j.centre().filter(WorkCentre::outside).isPresent())
        .mapToDouble(j -> j.passes() * j.days())
        .sum();
  }

  /** Days until the last web is there; 0 without webs, NaN when one is not known. */
  double webDays() {
    double days = 0;
    for (Sourcing web : webs) {
      days = Math.max(days, web.leadDays());
    }
    return days;
  }

  /** Days from the order to slit reels: the webs come together, the passes one after another. */
  double leadDays() {
    return webDays() + passDays();
  }

  /** What services ask, EUR; NaN when nobody runs one of the passes. */
  double sentOut() {
    return jobs.values().stream().mapToDouble(j -> j.passes() * j.cost()).sum();
  }

  /** Webs left over, kg. */
  double surplusKg() {
    return webs.stream().mapToDouble(Sourcing::surplusKg).sum();
  }

  /** Price of the webs left over, EUR. */
  double surplusEur() {
    return webs.stream().mapToDouble(Sourcing::surplusEur).sum();
  }
}
