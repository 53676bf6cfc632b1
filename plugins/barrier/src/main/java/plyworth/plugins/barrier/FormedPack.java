package plyworth.plugins.barrier;

import plyworth.shared.brief.Climate.Season;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * A structure made into the pack of the brief and handled.
 *
 * @param model the brief, the library and the draw
 * @param structure the structure
 */
record FormedPack(BarrierModel model, Structure structure) implements PackConductance {

  @Override
  public double at(Permeant permeant, Season season, double insideActivity) {
    return terms(permeant, season, insideActivity).total();
  }

  /** The same, way by way. */
  PackTerms terms(Permeant permeant, Season season, double insideActivity) {
    Laminate laminate = laminate(season, insideActivity);
    return terms(laminate.transmission(), permeant, laminate.resistance(permeant));
  }

  /** Way by way at the storage climate. */
  PackTerms atStorage(Permeant permeant) {
    return terms(permeant, model.climate().season(), model.climate().inside());
  }

  /** Conductance at the storage temperature with every layer as dry as it can ever be. */
  double tightest(Permeant permeant) {
    double resistance = 0;
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      double reference = 1 / model.layers().inPack(layer, outer, permeant);
      resistance +=
          reference / model.climates().span().lowest(model.layers().curve(layer, permeant));
      outer = layer;
    }
    return terms(model.layers(), permeant, resistance).total();
  }

  private PackTerms terms(LayerTransmission layers, Permeant permeant, double resistance) {
    return new PackTerms(model.pack().faceM2() / resistance, edge(layers, permeant));
  }

  /** The laminate of the pack in a season. */
  Laminate laminate(Season season, double insideActivity) {
    return Laminate.of(
        model.climates().layers(season), structure, season.humidityPercent() / 100, insideActivity);
  }

  /** The sealant is taken at the mean of the humidity outside and inside, in every season. */
  private double edge(LayerTransmission layers, Permeant permeant) {
    Layer sealant = structure.innermost();
    double permeability = layers.asSealant(sealant, permeant, model.climate().within());
    return model.pack().edge(permeability, 2 * model.context().gaugeUm(sealant));
  }
}
