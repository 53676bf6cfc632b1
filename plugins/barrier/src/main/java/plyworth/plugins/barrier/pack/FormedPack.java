package plyworth.plugins.barrier.pack;

import java.util.HashMap;
import java.util.Map;
import plyworth.plugins.barrier.climate.LayerFigures;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.structure.Structure;

/**
 * A structure made into the pack of the brief and handled. What has been read of its layers, and
 * each laminate once solved, is kept for as long as the pack is looked at; for one thread.
 */
public final class FormedPack implements PackConductance {

  private final BarrierModel model;
  private final Structure structure;
  private final double gapUm;
  private final Map<Double, LayerFigures> figures = new HashMap<>();
  private final Map<Place, Laminate> laminates = new HashMap<>();

  /** Where a laminate is: °C, and the humidity on its two sides, 0 to 1. */
  private record Place(double celsius, double outside, double inside) {}

  /** The pack of a structure. */
  public FormedPack(BarrierModel model, Structure structure) {
    this.model = model;
    this.structure = structure;
    this.gapUm = 2 * model.context().gaugeUm(structure.innermost());
  }

  /** The brief, the library and the draw. */
  public BarrierModel model() {
    return model;
  }

  /** The structure. */
  public Structure structure() {
    return structure;
  }

  @Override
  public double at(Permeant permeant, Season season, double insideActivity) {
    return terms(permeant, season, insideActivity).total();
  }

  /** The same, way by way. */
  PackTerms terms(Permeant permeant, Season season, double insideActivity) {
    Laminate laminate = laminate(season, insideActivity);
    return terms(
        laminate.figures(), permeant, laminate.resistance(permeant), season.temperatureC());
  }

  /** Way by way at the storage climate. */
  public PackTerms atStorage(Permeant permeant) {
    return terms(permeant, model.climate().season(), model.climate().inside());
  }

  /** Conductance at the storage temperature with every layer as dry as it can ever be. */
  double tightest(Permeant permeant) {
    double celsius = model.climate().celsius();
    LayerFigures dry = figures(celsius);
    return terms(dry, permeant, dry.tightest(permeant, model.climates().span()), celsius).total();
  }

  private PackTerms terms(
      LayerFigures layers, Permeant permeant, double resistance, double celsius) {
    return new PackTerms(
        model.pack().faceM2() / resistance,
        edge(layers, permeant),
        model.pack().leaks().conductance(permeant, celsius));
  }

  /** The laminate of the pack in a season. */
  public Laminate laminate(Season season, double insideActivity) {
    return laminates.computeIfAbsent(
        new Place(season.temperatureC(), season.humidityPercent() / 100, insideActivity),
        place -> Laminate.of(figures(place.celsius()), place.outside(), place.inside()));
  }

  private LayerFigures figures(double celsius) {
    return figures.computeIfAbsent(
        celsius, c -> new LayerFigures(model.climates().layers(c), structure.layers()));
  }

  /** The sealant is taken at the mean of the humidity outside and inside, in every season. */
  private double edge(LayerFigures layers, Permeant permeant) {
    double permeability = layers.sealant(permeant, model.climate().within());
    return model.pack().edge(permeability, gapUm);
  }
}
