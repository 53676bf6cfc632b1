package plyworth.plugins.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plyworth.shared.material.Material;
import plyworth.shared.plant.AmountSpan;
import plyworth.shared.plant.WorkCentre;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

/**
 * What keeps a machine or service from a pass.
 *
 * @param kind what it is
 * @param arguments what its sentences are made of, after the process and the machine
 */
record Snag(Kind kind, List<Object> arguments) {

  /**
   * Share of solvent in ink or adhesive above which a process asks for a machine that may run
   * solvents; judgement: water-based processes of the library carry up to 0.15, solvent-based ones
   * 0.55 and more.
   */
  private static final double SOLVENT_BASED = 0.3;

  /** What a machine may lack. The name is part of the keys of its sentences. */
  enum Kind {
    TOO_WIDE,
    TOO_NARROW,
    SOLVENT,
    STATIONS,
    WEB,
    LAYER
  }

  /** What an order asks of a machine whatever the structure: width, solvent, colours. */
  static List<Snag> ofOrder(WorkCentre centre, Process process, Demand demand) {
    List<Snag> snags = new ArrayList<>();
    double web = demand.webMm();
    if (web > centre.widthMm().to() && !centre.widthMm().holds(web)) {
      int fitting = demand.lanes(centre.widthMm().to());
      snags.add(
          new Snag(Kind.TOO_WIDE, List.of(web, centre.widthMm().to(), fitting, demand.lanes(web))));
    } else if (!centre.widthMm().holds(web)) {
      snags.add(new Snag(Kind.TOO_NARROW, List.of(web, centre.widthMm().from())));
    }
    if (!centre.solvents() && solventBased(process)) {
      snags.add(new Snag(Kind.SOLVENT, List.of()));
    }
    stations(centre, process, demand.colours()).ifPresent(snags::add);
    return snags;
  }

  /** Typical figures decide, not those of a draw: a process does not turn solvent-based by luck. */
  private static boolean solventBased(Process process) {
    return Stream.of("ink-voc", "adhesive-voc")
        .anyMatch(figure -> process.figure(figure).typical() > SOLVENT_BASED);
  }

  private static Optional<Snag> stations(WorkCentre centre, Process process, double needed) {
    boolean few = process.role() == ProcessRole.PRINT && centre.printStations() < needed;
    return few
        ? Optional.of(new Snag(Kind.STATIONS, List.of(centre.printStations(), needed)))
        : Optional.empty();
  }

  /**
   * What a layer and its outer neighbour ask of the machine of the pass that the layer enters: its
   * amount, the web next to it, and one station more for what is printed in one run.
   *
   * @param outer the layer outside it; null for the outermost
   */
  static List<Snag> ofLayer(
      WorkCentre centre,
      Process process,
      Layer layer,
      Layer outer,
      Demand demand,
      ScoringContext context) {
    List<Snag> snags = new ArrayList<>();
    if (layer.process().equals(process.id())) {
      if (outer != null && outer.process().equals(process.id())) {
        stations(centre, process, demand.colours() + 1).ifPresent(snags::add);
      }
      amount(Kind.LAYER, centre.layers(), layer, context).ifPresent(snags::add);
      if (outer != null && isWeb(outer, context)) {
        amount(Kind.WEB, centre.webs(), outer, context).ifPresent(snags::add);
      }
    } else {
      amount(Kind.WEB, centre.webs(), layer, context).ifPresent(snags::add);
    }
    return snags;
  }

  private static boolean isWeb(Layer layer, ScoringContext context) {
    return context.processes().role(layer) == ProcessRole.WEB;
  }

  private static Optional<Snag> amount(
      Kind kind, List<AmountSpan> taken, Layer layer, ScoringContext context) {
    Material material = context.material(layer);
    return AmountSpan.anyHolds(taken, layer, material.density())
        ? Optional.empty()
        : Optional.of(new Snag(kind, List.of(layer.toString(), AmountSpan.list(taken))));
  }
}
