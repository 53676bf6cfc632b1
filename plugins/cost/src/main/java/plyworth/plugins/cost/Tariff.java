package plyworth.plugins.cost;

import java.util.Set;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Order;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

/**
 * What things cost in the plant of one brief: rates of passes, prices of layers, tools.
 *
 * @param context brief, libraries, parameters and draw
 */
record Tariff(ScoringContext context) {

  static final String PRICE = "price";
  static final String SUPPLIED_SOLIDS = "supplied-solids";

  private static final Set<ProcessRole> PUTTING_DOWN =
      Set.of(ProcessRole.BOND, ProcessRole.COATING, ProcessRole.PRINT);

  Brief brief() {
    return context.brief();
  }

  /** Width of the mother web, m. */
  double widthM() {
    return brief().order().motherWebMm() / 1000;
  }

  /** Area that must leave slitting for a number of packs, m²: packs · film / layout efficiency. */
  double slitM2(double packs) {
    return packs * brief().pack().filmAreaM2() / brief().layoutEfficiency();
  }

  /** A figure of a process; NaN when it is missing or impossible. */
  double figure(Process process, PassFigure figure) {
    return figure.orUnknown(context.figure(process, figure.id()));
  }

  /**
   * Rates of a pass at its fastest speed. Set-up waste in the library is that of a web 1 m wide: it
   * grows with the width.
   */
  PassRates rates(Process process) {
    return new PassRates(
        figure(process, PassFigure.SETUP_TIME),
        figure(process, PassFigure.SETUP_WASTE) * widthM(),
        figure(process, PassFigure.RUNNING_WASTE),
        minutesPerM2(process, fastest(process)),
        figure(process, PassFigure.HOUR_RATE));
  }

  /** How many more minutes per m² than at its fastest a press needs on a web that it touches. */
  double slowdown(Process process, Layer web) {
    if (process.role() != ProcessRole.PRINT) {
      return 0;
    }
    boolean paper = context.kinds(web).contains("paper");
    double speed = paper ? paperSpeed(process) : figure(process, PassFigure.SPEED);
    return minutesPerM2(process, speed) - minutesPerM2(process, fastest(process));
  }

  private double minutesPerM2(Process process, double speed) {
    return 1 / (speed * widthM() * figure(process, PassFigure.EFFICIENCY));
  }

  private double fastest(Process process) {
    double speed = figure(process, PassFigure.SPEED);
    return process.role() == ProcessRole.PRINT ? Math.max(speed, paperSpeed(process)) : speed;
  }

  private double paperSpeed(Process process) {
    double onPaper = figure(process, PassFigure.SPEED_PAPER);
    return Double.isNaN(onPaper) ? figure(process, PassFigure.SPEED) : onPaper;
  }

  /** Price of a layer's material as bought, EUR/kg; NaN when unknown. */
  double price(Layer layer) {
    double price = context.property(layer, PRICE);
    return price >= 0 ? price : Double.NaN;
  }

  /**
   * Mass bought for one m² that enters the pass, kg: dry grammage / solids as supplied · edge
   * factor.
   */
  double boughtKgPerM2(Layer layer) {
    return context.grammage(layer) / 1000 / solids(layer) * edgeFactor(layer);
  }

  /** Cost of a layer's material for one m² that enters the pass, EUR. */
  double materialPerM2(Layer layer) {
    return boughtKgPerM2(layer) * price(layer);
  }

  /**
   * Share of solids in a material as it is sold: its own figure; else, for an ink, that of the ink
   * in the press; else 1, because adhesives and coatings are priced per kg dry.
   */
  double solids(Layer layer) {
    if (context.material(layer).property(SUPPLIED_SOLIDS).isPresent()) {
      return PassFigure.INK_SOLIDS.orUnknown(context.property(layer, SUPPLIED_SOLIDS));
    }
    boolean ink =
        context.processes().role(layer) == ProcessRole.PRINT
            && context.kinds(layer).contains("ink");
    return ink ? figure(process(layer), PassFigure.INK_SOLIDS) : 1;
  }

  /** Edge bead, purge and what stays in pans; 1 for a web and for a process that names none. */
  double edgeFactor(Layer layer) {
    if (!putDown(layer)) {
      return 1;
    }
    Process process = process(layer);
    boolean named = process.figure(PassFigure.EDGE_FACTOR.id()).known();
    return named ? figure(process, PassFigure.EDGE_FACTOR) : 1;
  }

  /** Whether a process of its own puts a layer down on a web. */
  boolean putDown(Layer layer) {
    return PUTTING_DOWN.contains(context.processes().role(layer));
  }

  /** Whether a layer is a web, or a part of one. */
  boolean web(Layer layer) {
    return layer != null && !putDown(layer);
  }

  /** Whether a layer is bought as a web and unwound. */
  boolean unwound(Layer layer) {
    return context.processes().role(layer) == ProcessRole.WEB;
  }

  private Process process(Layer layer) {
    return context.processes().require(layer.process());
  }

  /**
   * Tools of a print pass for one order, EUR: the larger of T/orders and T·L/life, with T the set
   * of new colours and L the running metres of good web in the order.
   *
   * <p>Waste metres wear the tools too; left out, they move the price by less than 0.1 %.
   */
  double tooling(Process process, double packs) {
    Order order = brief().order();
    if (process.role() != ProcessRole.PRINT || order.newColours() == 0) {
      return 0;
    }
    double set = order.newColours() * figure(process, PassFigure.TOOLING_PER_COLOUR);
    if (set == 0) {
      return 0;
    }
    double metres = slitM2(packs) / widthM();
    double life = figure(process, PassFigure.TOOL_LIFE);
    return Math.max(set / order.orders(), set * metres / life);
  }

  /** Freight of an order of a grammage, EUR; by the net weight of its packs. */
  double freight(double grammage, double packs) {
    double kilograms = grammage / 1000 * packs * brief().pack().filmAreaM2();
    return kilograms * context.parameter(Parameters.FREIGHT);
  }

  /** Price of what costs that much, EUR: the margin is a share of the price. */
  double priced(double cost) {
    return cost / (1 - context.parameter(Parameters.MARGIN));
  }

  /** The last pass of every route. */
  Process slitting() {
    return context.processes().require(ProcessLibrary.SLITTING);
  }
}
