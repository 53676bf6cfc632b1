package plyworth.plugins.barrier.climate;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.plugins.barrier.laminate.Ply;
import plyworth.plugins.barrier.permeation.LayerTransmission;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.structure.Layer;

/**
 * What the layers of one formed and handled structure let through at one temperature. Every figure
 * is read once, when it is first asked for; for one thread.
 */
public final class LayerFigures {

  private final LayerTransmission transmission;
  private final List<Layer> layers;
  private final List<Ply> plies;
  private final Map<Permeant, double[]> resistances = new EnumMap<>(Permeant.class);
  private final Map<Permeant, Double> sealants = new EnumMap<>(Permeant.class);

  /** Layers, outside first, at the temperature of a transmission. */
  public LayerFigures(LayerTransmission transmission, List<Layer> layers) {
    this.transmission = transmission;
    this.layers = layers;
    this.plies = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      plies.add(new Ply(resistance(i, Permeant.WATER), curve(i, Permeant.WATER)));
    }
  }

  /** The layers, outside first. */
  public List<Layer> layers() {
    return layers;
  }

  /** The layers on the way of water. */
  public List<Ply> plies() {
    return plies;
  }

  /** How what a layer lets through follows humidity. */
  public HumidityCurve curve(int layer, Permeant permeant) {
    return transmission.curve(layers.get(layer), permeant);
  }

  /** Resistance of a layer where its curve is 1, m²·day·force/amount; NaN when unknown. */
  public double resistance(int layer, Permeant permeant) {
    return resistances.computeIfAbsent(permeant, this::resistances)[layer];
  }

  private double[] resistances(Permeant permeant) {
    double[] figures = new double[layers.size()];
    Layer outer = null;
    for (int i = 0; i < figures.length; i++) {
      figures[i] = 1 / transmission.inPack(layers.get(i), outer, permeant);
      outer = layers.get(i);
    }
    return figures;
  }

  /** Resistance of all layers, each where its curve is least within a span of humidity. */
  public double tightest(Permeant permeant, HumiditySpan span) {
    double sum = 0;
    for (int i = 0; i < layers.size(); i++) {
      sum += resistance(i, permeant) / span.lowest(curve(i, permeant));
    }
    return sum;
  }

  /** Permeability of the innermost layer as a sealant, at the {@link StorageClimate#within}. */
  public double sealant(Permeant permeant, double within) {
    Layer innermost = layers.get(layers.size() - 1);
    return sealants.computeIfAbsent(permeant, p -> transmission.asSealant(innermost, p, within));
  }
}
