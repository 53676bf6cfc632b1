package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.climate.StorageClimate;
import plyworth.plugins.barrier.pack.BarrierCriteria;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.Laminate;
import plyworth.plugins.barrier.pack.LayerData;
import plyworth.plugins.barrier.pack.LeakRisk;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.permeation.Leaks;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Finding.Level;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** What is worth saying about one structure. */
public final class BarrierFindings {

  /** Margin below which a trial is called for (common practice). */
  private static final double THIN_MARGIN = 1.5;

  /** Flat figures below these are not resolved by the instruments. */
  private static final double OXYGEN_FLOOR = 0.005;

  private static final double WATER_FLOOR = 0.05;

  private final FormedPack pack;
  private final BarrierModel model;
  private final Structure structure;
  private final PackBarrier barrier;
  private final List<Finding> findings = new ArrayList<>();

  private BarrierFindings(FormedPack pack, PackBarrier barrier) {
    this.pack = pack;
    this.model = pack.model();
    this.structure = pack.structure();
    this.barrier = barrier;
  }

  /** What is worth saying; what measurements of today's pack say of it comes last. */
  public static List<Finding> of(FormedPack pack, PackBarrier barrier) {
    BarrierFindings all = new BarrierFindings(pack, barrier);
    all.keeping();
    all.volatileLoss();
    all.instrumentFloor();
    all.leaks();
    all.findings.addAll(CalibrationFindings.of(all.model));
    return List.copyOf(all.findings);
  }

  private void keeping() {
    Optional<PackBarrier.Path> limiting = barrier.limiting();
    if (limiting.isEmpty()) {
      if (!Double.isNaN(barrier.margin()) && barrier.demand().applies()) {
        add(Level.INFORMS, "limiting", Text.of("finding.never-limiting"), "common practice");
      }
      return;
    }
    PackBarrier.Path path = limiting.get();
    if (barrier.failsBelow(model.blockMargin())) {
      add(Level.BLOCKS, BarrierCriteria.DOES_NOT_KEEP, ends("finding.does-not-keep.", path), path);
    } else if (barrier.margin() < 1) {
      add(Level.WARNS, "too-short", ends("finding.does-not-keep.", path), path);
    } else if (barrier.margin() < THIN_MARGIN) {
      add(Level.WARNS, "thin-margin", ends("finding.thin-margin.", path), path);
    }
    boolean beyond = !path.life().reached() || path.days() > barrier.demand().cap();
    String key = beyond ? "finding.beyond." : "finding.limiting.";
    add(Level.INFORMS, "limiting", ends(key, path), path);
    season(path);
    decidingLayer(path);
  }

  /** In which season of a changing climate the limit is crossed. */
  private void season(PackBarrier.Path path) {
    Seasons seasons = model.climates().seasons();
    if (!seasons.constant() && path.life().reached() && path.days() > 0) {
      int index = seasons.on(path.days());
      Season season = seasons.round().get(index);
      add(
          Level.INFORMS,
          "season",
          Text.of(
              "finding.season",
              index + 1,
              season.temperatureC(),
              season.humidityPercent(),
              path.days()),
          path);
    }
  }

  /** Days, times the brief, the brief, and what crosses the pack per day. */
  private Text ends(String key, PackBarrier.Path path) {
    if (path.mechanism().balance().atOnce()) {
      return AtOnce.text(key, model, path.mechanism());
    }
    double asked = barrier.demand().days();
    return Text.of(
        key + path.mechanism().word(),
        path.days(),
        path.days() / asked,
        asked,
        Math.abs(path.mechanism().perDay(path.total())));
  }

  /** The layer that holds back most, when what is known of it is weak. */
  private void decidingLayer(PackBarrier.Path path) {
    Permeant permeant = path.mechanism().permeant();
    StorageClimate climate = model.climate();
    Laminate laminate = pack.laminate(climate.season(), climate.inside());
    int deciding = -1;
    double most = 0;
    for (int i = 0; i < laminate.layers().size(); i++) {
      double resistance = laminate.resistance(i, permeant);
      if (resistance > most) {
        most = resistance;
        deciding = i;
      }
    }
    if (deciding >= 0) {
      Layer layer = laminate.layers().get(deciding);
      handling(layer, deciding == 0 ? null : laminate.layers().get(deciding - 1));
      origin(layer, permeant);
    }
  }

  private void handling(Layer layer, Layer outer) {
    double multiplier = model.layers().damage().multiplier(layer, outer);
    if (multiplier != 1) {
      add(
          Level.INFORMS,
          "handling",
          Text.of("finding.handling", layer.material(), multiplier),
          "multiplier after flexing as in ASTM F392 condition D, or at creases; from memory");
    }
  }

  private void origin(Layer layer, Permeant permeant) {
    LayerData.of(model, layer, permeant)
        .map(LayerData::origin)
        .filter(o -> o.kind() == SourceKind.MEMORY || o.kind() == SourceKind.JUDGEMENT)
        .map(Sourced::source)
        .ifPresent(
            source ->
                add(
                    Level.INFORMS,
                    "measure-first",
                    Text.of("finding.measure-first", layer.material()),
                    source));
  }

  private void volatileLoss() {
    barrier
        .demand()
        .alcohol()
        .ifPresent(
            balance -> {
              double loss = barrier.volatileLoss();
              double allowed = balance.content().allowedLossPercent();
              if (barrier.losesTooMuch()) {
                PackBarrier.Path path = barrier.alcohol().orElseThrow();
                double perDay = path.mechanism().perDay(path.total());
                add(
                    Level.BLOCKS,
                    BarrierCriteria.VOLATILE_LOSS_ID,
                    Text.of(
                        "finding.volatile-loss", loss, allowed, barrier.demand().days(), perDay),
                    path);
              }
            });
  }

  private void instrumentFloor() {
    boolean foil =
        structure.layers().stream()
            .anyMatch(layer -> model.context().material(layer).kinds().contains("foil"));
    if (foil && (barrier.otr() < OXYGEN_FLOOR || barrier.wvtr() < WATER_FLOOR)) {
      add(
          Level.WARNS,
          "instrument-floor",
          Text.of("finding.instrument-floor", barrier.otr(), barrier.wvtr()),
          "converter's test note on 25 and 51 µm foil, name withheld");
    }
  }

  private void leaks() {
    Leaks leaks = model.pack().leaks();
    if (leaks.any()) {
      Text text = Text.of("finding.leaks", leaks.count(), leaks.channel().diameterUm());
      add(Level.INFORMS, "leaks", text, "assumption of this study");
    }
    LeakRisk risk = barrier.leakRisk();
    if (risk.level() < LeakRisk.UNLIKELY) {
      boolean likely = risk.level() == LeakRisk.LIKELY;
      add(
          likely ? Level.WARNS : Level.INFORMS,
          BarrierCriteria.LEAK_RISK_ID,
          Text.of(
              likely ? "finding.leak-risk.0" : "finding.leak-risk.1",
              100 * risk.filled(),
              risk.stepUm()),
          "common practice; thresholds are judgement");
    }
  }

  private void add(Level level, String rule, Text text, PackBarrier.Path path) {
    add(level, rule, text, path.mechanism().source());
  }

  private void add(Level level, String rule, Text text, String source) {
    findings.add(new Finding(level, rule, text, source));
  }
}
