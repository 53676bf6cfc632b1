package plyworth.plugins.barrier;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plyworth.plugins.barrier.explain.BarrierExplanation;
import plyworth.plugins.barrier.explain.BarrierFindings;
import plyworth.plugins.barrier.layerwise.BarrierLayerwise;
import plyworth.plugins.barrier.pack.BarrierCriteria;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.material.Material;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** The barrier plugin bound to one brief. */
final class BarrierScorer implements Scorer {

  private final BarrierModel model;
  private final Map<String, Text> notApplicable;

  BarrierScorer(BarrierModel model) {
    this.model = model;
    this.notApplicable = model.notApplicable();
  }

  /** What it is bound to. */
  BarrierModel model() {
    return model;
  }

  @Override
  public Map<String, Text> notApplicable() {
    return Map.copyOf(notApplicable);
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    FormedPack pack = new FormedPack(model, structure);
    PackBarrier barrier = PackBarrier.of(pack);
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    outcomes.put(BarrierCriteria.OTR_ID, flat(structure, Permeant.OXYGEN, barrier.otr()));
    outcomes.put(BarrierCriteria.WVTR_ID, flat(structure, Permeant.WATER, barrier.wvtr()));
    outcomes.put(BarrierCriteria.PACK_OTR_ID, flat(structure, Permeant.OXYGEN, barrier.packOtr()));
    outcomes.put(BarrierCriteria.PACK_WVTR_ID, flat(structure, Permeant.WATER, barrier.packWvtr()));
    put(outcomes, BarrierCriteria.SHELF_LIFE_ID, structure, barrier, barrier.shelfLife());
    put(outcomes, BarrierCriteria.MARGIN_ID, structure, barrier, barrier.margin());
    put(outcomes, BarrierCriteria.VOLATILE_LOSS_ID, structure, barrier, barrier.volatileLoss());
    outcomes.put(BarrierCriteria.LEAK_RISK_ID, leakRisk(structure, barrier.leakRisk().level()));
    outcomes.put(BarrierCriteria.LIGHT_ID, new Outcome.Scored(barrier.light()));
    return new Assessment(outcomes, BarrierFindings.of(pack, barrier), Map.of());
  }

  private void put(
      Map<String, Outcome> outcomes,
      String id,
      Structure structure,
      PackBarrier barrier,
      double figure) {
    Text why = notApplicable.get(id);
    if (why != null) {
      outcomes.put(id, new Outcome.NotApplicable(why));
    } else {
      outcomes.put(
          id, Double.isNaN(figure) ? missing(structure, barrier) : new Outcome.Scored(figure));
    }
  }

  private Outcome flat(Structure structure, Permeant permeant, double figure) {
    return Double.isNaN(figure)
        ? missing(structure, permeant, false).orElseThrow()
        : new Outcome.Scored(figure);
  }

  private Outcome leakRisk(Structure structure, double risk) {
    return Double.isNaN(risk)
        ? structure.layers().stream()
            .filter(layer -> Double.isNaN(model.context().gaugeUm(layer)))
            .findFirst()
            .map(layer -> new Outcome.DataMissing(layer.material(), Material.DENSITY))
            .orElseThrow()
        : new Outcome.Scored(risk);
  }

  /** What the first unknown mechanism lacks. */
  private Outcome missing(Structure structure, PackBarrier barrier) {
    return model
        .demand()
        .missing()
        .or(
            () ->
                barrier.paths().stream()
                    .filter(p -> Double.isNaN(p.days()))
                    .flatMap(p -> p.mechanism().permeants().stream())
                    .flatMap(permeant -> missing(structure, permeant, true).stream())
                    .findFirst())
        .orElseThrow();
  }

  /** Oxygen in the pack also needs the humidity within, where some layer follows it. */
  private Optional<Outcome.DataMissing> missing(
      Structure structure, Permeant permeant, boolean inPack) {
    Optional<Outcome.DataMissing> own = lacking(structure, permeant, inPack);
    boolean humid =
        inPack
            && structure.layers().stream()
                .anyMatch(layer -> !model.layers().curve(layer, permeant).one());
    return own.isEmpty() && humid ? lacking(structure, Permeant.WATER, true) : own;
  }

  private Optional<Outcome.DataMissing> lacking(
      Structure structure, Permeant permeant, boolean inPack) {
    for (Layer layer : structure.layers()) {
      Optional<Outcome.DataMissing> missing = model.layers().missing(layer, permeant, inPack);
      if (missing.isPresent()) {
        return missing;
      }
    }
    return Optional.empty();
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    return BarrierExplanation.of(model, structure);
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.of(BarrierLayerwise.of(model));
  }
}
