package plyworth.plugins.barrier.permeation;

import java.util.Arrays;
import java.util.Optional;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.shared.material.Material;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

/**
 * What one layer lets through: as measured on a flat sheet, and in the pack at a temperature.
 *
 * <p>Layers that scale with gauge follow permeability over gauge; layers given as a whole (foil,
 * metallised and coated webs, papers) follow their rate as it stands. NaN where data is missing.
 */
public final class LayerTransmission {

  /** Property of a foil: pinholes seen over a light table, per m². */
  public static final String PINHOLES = "pinholes";

  /** The polymer that covers pinholes in foil. */
  static final String COVER = "ldpe";

  private final ScoringContext context;
  private final double celsius;
  private final Damage damage;
  private final HumidityCurves curves;

  /**
   * The layers of a context.
   *
   * @param celsius temperature of the pack, °C
   * @param shared damage over its standard
   */
  public LayerTransmission(ScoringContext context, double celsius, double shared) {
    this.context = context;
    this.celsius = celsius;
    this.damage = new Damage(context, shared);
    this.curves = HumidityCurves.of(context);
  }

  /** How handling harms the layers. */
  public Damage damage() {
    return damage;
  }

  /**
   * Transmission of the flat layer under the conditions of measurement, in the unit of {@link
   * Permeant#rateUnit}; oxygen at 50 % RH. Foil without a tabulated rate takes that of its
   * pinholes.
   */
  public double flat(Layer layer, Permeant permeant) {
    double rate = asTabulated(layer, permeant);
    double shown = Double.isNaN(rate) ? throughPinholes(layer, permeant) : rate;
    return permeant == Permeant.OXYGEN
        ? shown * curve(layer, permeant).value(Permeant.OXYGEN_QUOTED_AT)
        : shown;
  }

  /**
   * Transmission in the formed and handled pack at the temperature, in the unit of {@link
   * Permeant#packUnit}, where the {@link #curve} of the layer is 1.
   */
  public double inPack(Layer layer, Layer outer, Permeant permeant) {
    return sound(layer, permeant)
        * climateFactor(layer, permeant)
        * damage.multiplier(layer, outer);
  }

  /**
   * The same under the conditions of measurement, in the unit of {@link Permeant#rateUnit}, where
   * the {@link #curve} of the layer is 1.
   */
  public double inLaboratory(Layer layer, Layer outer, Permeant permeant) {
    return sound(layer, permeant) * damage.multiplier(layer, outer);
  }

  /** How the materials follow humidity. */
  public HumidityCurves curves() {
    return curves;
  }

  /** How the transmission of a layer follows the humidity it sees. */
  public HumidityCurve curve(Layer layer, Permeant permeant) {
    return curves.of(context.material(layer), permeant);
  }

  /**
   * Permeability of the layer as a sealant, amount·µm/(m²·day·force): its own, or for a layer given
   * as a whole its rate times its gauge, which is the least it can be.
   *
   * @param within mean of the humidity outside and inside, that in the middle of the way, 0 to 1
   */
  public double asSealant(Layer layer, Permeant permeant, double within) {
    return asSealantInLaboratory(layer, permeant, within) * climateFactor(layer, permeant);
  }

  /** The same at the temperature of measurement, per unit of the force there. */
  public double asSealantInLaboratory(Layer layer, Permeant permeant, double within) {
    return sound(layer, permeant) * context.gaugeUm(layer) * curve(layer, permeant).value(within);
  }

  /**
   * The larger of the tabulated rate and that of the pinholes: the table ends at the floor of the
   * instruments, the holes depend on assumptions, and the pack must keep in either case.
   */
  private double sound(Layer layer, Permeant permeant) {
    double rate = asTabulated(layer, permeant);
    double holes = throughPinholes(layer, permeant);
    if (Double.isNaN(rate) || Double.isNaN(holes)) {
      return Double.isNaN(rate) ? holes : rate;
    }
    return Math.max(rate, holes);
  }

  /** The rate of the layer, or its permeability over its gauge; NaN when neither is known. */
  public double asTabulated(Layer layer, Permeant permeant) {
    double rate = context.property(layer, permeant.rateId());
    double permeability = context.property(layer, permeant.permeabilityId());
    return Double.isNaN(rate)
        ? permeability * permeant.micrometres() / context.gaugeUm(layer)
        : rate;
  }

  /** Number of pinholes times the conductance of one; NaN for layers that list none. */
  public double throughPinholes(Layer layer, Permeant permeant) {
    double holes = context.property(layer, PINHOLES);
    Optional<Material> cover = context.materials().find(COVER);
    if (Double.isNaN(holes) || cover.isEmpty()) {
      return Double.NaN;
    }
    double permeability =
        context.property(cover.get(), permeant.permeabilityId(), Double.NaN)
            * permeant.micrometres();
    return holes
        * CoveredPinhole.conductance(
            context.parameter(BarrierParameters.PINHOLE_DIAMETER) / 2,
            context.parameter(BarrierParameters.PINHOLE_COVER),
            permeability);
  }

  /**
   * From the temperature of measurement to that of the pack. Water changes from a rate at 90 % RH
   * to a permeance per pascal: permeability carries the activation energy, the vapour pressure is
   * taken out (Arrhenius and Magnus).
   */
  public double climateFactor(Layer layer, Permeant permeant) {
    double factor = Arrhenius.factor(activation(layer, permeant), permeant.measuredAtC(), celsius);
    return permeant == Permeant.WATER
        ? factor / (Permeant.WATER_MEASURED_AT * SaturatedVapour.pascal(permeant.measuredAtC()))
        : factor;
  }

  private double activation(Layer layer, Permeant permeant) {
    return permeant.alcohol()
        ? context.parameter(BarrierParameters.ALCOHOL_ACTIVATION)
        : context.property(layer, permeant.activationId());
  }

  /** Which property the layer lacks, if any. */
  public Optional<Outcome.DataMissing> missing(Layer layer, Permeant permeant, boolean inPack) {
    if (Double.isNaN(flat(layer, permeant))) {
      return Optional.of(new Outcome.DataMissing(layer.material(), wanted(layer, permeant)));
    }
    return inPack && Double.isNaN(climateFactor(layer, permeant))
        ? Optional.of(new Outcome.DataMissing(layer.material(), permeant.activationId()))
        : Optional.empty();
  }

  /** What would do for a layer: a rate where the material is given as a whole, like foil. */
  private String wanted(Layer layer, Permeant permeant) {
    Material material = context.material(layer);
    boolean whole =
        Arrays.stream(Permeant.values()).anyMatch(p -> material.property(p.rateId()).isPresent());
    return whole ? permeant.rateId() : permeant.permeabilityId();
  }
}
