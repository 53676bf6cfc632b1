package plyworth.plugins.machinability;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.brief.Machine;
import plyworth.shared.brief.Machine.SealZone;
import plyworth.shared.data.Choice;
import plyworth.shared.scoring.Explanation.Curves;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Series;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** Why the seal takes its dwell and has its window: zones and the warming of the interface. */
final class SealExplanation {

  private static final int CELLS = 40;
  private static final int STEPS = 240;
  private static final int SHOWN = 80;

  private final MachinabilityScorer scorer;
  private final Structure structure;
  private final LaminateState state;
  private final Verdict verdict;
  private final Settings settings;
  private final Machine machine;

  SealExplanation(
      MachinabilityScorer scorer, Structure structure, LaminateState state, Verdict verdict) {
    this.scorer = scorer;
    this.structure = structure;
    this.state = state;
    this.verdict = verdict;
    this.settings = scorer.settings();
    this.machine = settings.machine();
  }

  List<Section> sections() {
    boolean known = !Double.isNaN(settings.plain(state.wall()).slowest());
    return known ? List.of(zones(), warming()) : List.of();
  }

  private Section zones() {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(zone("one on one, face to face", SealZone.ONE_ON_ONE, false));
    rows.add(zone("one on two, the third web turned", SealZone.ONE_ON_TWO, false));
    rows.add(zone("one on two, a lap: both webs the same way up", SealZone.ONE_ON_TWO, true));
    rows.add(zone("one on three, fin crossing", SealZone.ONE_ON_THREE, false));
    return new Table(
        Text.of(
            "explain.zones",
            Choice.plain(machine.zone()),
            machine.jawC(),
            machine.dwellS(),
            machine.jawSpreadK()),
        List.of(
            Text.of("column.zone"),
            Text.of("column.dwell"),
            Text.of("column.coolest"),
            Text.of("column.hottest"),
            Text.of("column.window")),
        rows,
        Text.of("explain.zones.basis", settings.startC(), settings.marginK()));
  }

  /** One zone as the thickest, with the hottest jaws of the plain zone. */
  private List<Object> zone(String name, SealZone zone, boolean sameWay) {
    Sealing sealing = new Sealing(settings);
    HeatingCurve curve = HeatingCurve.of(state.wall(), settings.contact(), zone, sameWay);
    double coolest =
        sealing.jawFor(sealing.target(state.initiation()), curve.remaining(machine.dwellS()));
    boolean counts =
        zone == machine.zone() && (zone != SealZone.ONE_ON_TWO || sameWay == settings.sameWayLap());
    return List.of(
        counts ? name + " (the zone that counts here)" : name,
        sealing.dwell(curve, state.initiation()),
        coolest,
        verdict.hottestC(),
        sealing.window(coolest, verdict.hottestC()));
  }

  private Section warming() {
    HeatingCurve slow = settings.thickest(state.wall());
    double duration = Math.max(1.2 * machine.dwellS(), 2.5 / slow.slowest());
    List<Series> series = new ArrayList<>();
    series.add(course("curve.plain", SealZone.ONE_ON_ONE, duration));
    if (machine.zone() != SealZone.ONE_ON_ONE) {
      series.add(course("curve.thickest", machine.zone(), duration));
    }
    if (state.initiation() < Sealing.NO_SEALANT_C) {
      double target = state.initiation() + settings.marginK();
      series.add(
          new Series(Text.of("curve.target"), List.of(0.0, duration), List.of(target, target)));
    }
    return new Curves(
        Text.of("explain.warming"),
        Text.of("axis.time"),
        Text.of("axis.temperature"),
        series,
        Text.of("explain.warming.basis"));
  }

  private Series course(String key, SealZone zone, double duration) {
    Conduction.Course course =
        Conduction.of(
                scorer.layers(structure), settings.contact(), zone, settings.sameWayLap(), CELLS)
            .course(duration, STEPS);
    List<Double> seconds = new ArrayList<>();
    List<Double> temperatures = new ArrayList<>();
    for (int i = 0; i <= STEPS; i += STEPS / SHOWN) {
      seconds.add(course.seconds()[i]);
      temperatures.add(machine.jawC() - course.missing()[i] * (machine.jawC() - settings.startC()));
    }
    return new Series(Text.of(key), seconds, temperatures);
  }
}
