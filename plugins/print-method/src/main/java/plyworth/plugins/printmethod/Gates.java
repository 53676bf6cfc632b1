package plyworth.plugins.printmethod;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;

/** The tests of print against its surface. */
record Gates(Plant plant, Map<String, WetProcess> processes) {

  /** Polyethylene thinner than this stretches on gravure, µm (common practice). */
  private static final double THIN_POLYETHYLENE = 30;

  /** Every gate of a printed surface, in the order they are looked at. */
  List<Gate> of(Printed printed) {
    List<Gate> gates = new ArrayList<>();
    gates.add(position(printed));
    if (printed.surface().needsWetting() && !printed.primed()) {
      gates.add(wetting(printed));
    }
    WetProcess by = by(printed);
    if (printed.surface().face().equals("paper") && by.kind() == InkKind.WATER) {
      gates.add(moisture(printed));
    }
    double web = plant.context().figure(by.process(), "web-temperature");
    if (web > printed.surface().webLimit()) {
      gates.add(heat(printed, web));
    }
    if (stretches(printed)) {
      gates.add(
          new Gate(
              "register",
              Verdict.CONDITIONAL,
              Text.of("gate.register", printed.web().material()),
              "common practice: thin polyethylene stretches without a common impression drum"));
    }
    return gates;
  }

  /** The gravest verdict of a printed surface. */
  Verdict worst(Printed printed) {
    return of(printed).stream().map(Gate::verdict).reduce(Verdict.NORMAL, Verdict::worse);
  }

  private Gate position(Printed printed) {
    String position = printed.surface().position(printed.reverse(), printed.primed());
    WetProcess by = by(printed);
    Positions.Entry entry = Positions.of(position, by.process().id(), by.kind());
    Text text =
        Text.of(
            position.endsWith("-bare") ? "gate.bare" : "gate.position",
            by.process().id(),
            position,
            printed.web().material(),
            entry.verdict().plain());
    return new Gate("position", entry.verdict(), text, entry.source());
  }

  private Gate wetting(Printed printed) {
    WetProcess by = by(printed);
    Surface surface = printed.surface();
    double level = level(printed);
    double required = surface.required(by.kind());
    double tension = plant.context().figure(by.process(), "ink-surface-tension");
    Verdict verdict = Wetting.judge(level, required, tension, plant.corona());
    Text text =
        Text.of(
            "gate.wetting",
            printed.web().material(),
            shown(level),
            shown(required),
            shown(tension));
    return new Gate("wetting", verdict, text, surface.source());
  }

  private static Object shown(double figure) {
    return Double.isNaN(figure) ? "unknown" : (Object) figure;
  }

  /**
   * Treatment level of the printed face, mN/m: the property of the material, or what a web ordered
   * treated is delivered with when that is higher.
   */
  double level(Printed printed) {
    double own = plant.context().property(printed.web(), "surface-energy");
    double delivered = printed.surface().delivered();
    return plant.treatedWebs() && delivered > own ? delivered : own;
  }

  private Gate moisture(Printed printed) {
    double grammage = plant.context().grammage(printed.web());
    double water = layDown(printed.ink()).water();
    double points = Moisture.points(printed.surface().absorbed(), water, grammage);
    Verdict verdict = Double.isNaN(points) ? Verdict.UNKNOWN : Moisture.judge(points, grammage);
    Text text = Text.of("gate.moisture", printed.web().material(), grammage, shown(points));
    return new Gate("moisture", verdict, text, printed.surface().source());
  }

  private Gate heat(Printed printed, double web) {
    double limit = printed.surface().webLimit();
    Text text = Text.of("gate.heat", printed.web().material(), limit, web);
    return new Gate("web-temperature", Verdict.CONDITIONAL, text, "common practice");
  }

  private boolean stretches(Printed printed) {
    return printed.surface().id().equals("polyethylene")
        && printed.ink().process().startsWith("gravure")
        && plant.context().gaugeUm(printed.web()) < THIN_POLYETHYLENE;
  }

  private LayDown layDown(Layer ink) {
    return new LayDown(ink, processes.get(ink.process()), plant.context().grammage(ink));
  }

  private WetProcess by(Printed printed) {
    return processes.get(printed.ink().process());
  }
}
