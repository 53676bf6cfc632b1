package plyworth.plugins.barrier.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.plugins.barrier.course.VolatileBalance;
import plyworth.plugins.barrier.diffusion.DiffusionLayer;
import plyworth.plugins.barrier.diffusion.LayerStack;
import plyworth.plugins.barrier.diffusion.TimeLag;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * A laminate that alcohol begins to pass, from the day of filling: its layers, inside first.
 *
 * @param layers what each resists and holds
 * @param names the layers as they are written
 * @param activity activity of the alcohol inside, as filled
 * @param faceM2 area of the faces, m²
 */
public record StartUp(
    List<DiffusionLayer> layers, List<Layer> names, double activity, double faceM2) {

  private static final int CELLS = 40;
  private static final int STEPS = 600;

  /** The course is followed for so many time lags. */
  private static final double HORIZON = 6;

  /** Share of the steady flow that counts as steady. */
  private static final double STEADY = 0.98;

  private static final double SECONDS_PER_DAY = 86_400;

  /** The start-up of a structure; empty when it lacks data or lets nothing pass. */
  public static Optional<StartUp> of(
      BarrierModel model, Structure structure, VolatileBalance balance) {
    List<DiffusionLayer> layers = new ArrayList<>();
    List<Layer> names = new ArrayList<>();
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      double resistance = 1 / model.layers().inPack(layer, outer, balance.permeant());
      double days = squareOverDiffusivity(model, layer, balance.permeant());
      if (!(resistance < Double.POSITIVE_INFINITY) || Double.isNaN(days)) {
        return Optional.empty();
      }
      layers.add(0, DiffusionLayer.of(resistance, days));
      names.add(0, layer);
      outer = layer;
    }
    return Optional.of(
        new StartUp(layers, names, balance.courses().get(0).activity(), model.pack().faceM2()));
  }

  /** L²/D at the storage climate, days; nothing for foil, which holds no alcohol. */
  private static double squareOverDiffusivity(BarrierModel model, Layer layer, Permeant permeant) {
    double gauge = model.context().gaugeUm(layer);
    return foil(model, layer)
        ? 0
        : gauge * gauge / (diffusivity(model, layer, permeant) * SECONDS_PER_DAY);
  }

  private static boolean foil(BarrierModel model, Layer layer) {
    return model.context().material(layer).kinds().contains("foil");
  }

  /** The first layer from outside whose diffusion coefficient is not known. */
  public static Optional<Layer> unknown(
      BarrierModel model, Structure structure, Permeant permeant) {
    return structure.layers().stream()
        .filter(l -> !foil(model, l) && Double.isNaN(diffusivity(model, l, permeant)))
        .findFirst();
  }

  /** Diffusion coefficient at the storage climate, µm²/s: moved there as the transmission is. */
  public static double diffusivity(BarrierModel model, Layer layer, Permeant permeant) {
    return model.context().property(layer, permeant.diffusivityId())
        * model.layers().climateFactor(layer, permeant);
  }

  /** Time lag of the laminate, days. */
  public double lagDays() {
    return TimeLag.days(layers);
  }

  /** What passes the faces in the steady state, g/day. */
  public double steadyG() {
    return faceM2 * activity / layers.stream().mapToDouble(DiffusionLayer::resistance).sum();
  }

  /** What the laminate holds in the steady state, g per pack. */
  public double heldG() {
    return faceM2 * activity * TimeLag.held(layers);
  }

  /** The course over six time lags, per square metre. */
  public List<LayerStack.Moment> course() {
    return new LayerStack(layers, CELLS)
        .course(day -> activity, HORIZON * Math.max(lagDays(), Double.MIN_NORMAL), STEPS);
  }

  /** The day from which the flow out is within 2 % of the steady one, as far as followed. */
  public double steadyDay(List<LayerStack.Moment> course) {
    for (int i = 1; i < course.size(); i++) {
      double days = course.get(i).day() - course.get(i - 1).day();
      double left = faceM2 * (course.get(i).left() - course.get(i - 1).left());
      if (left >= STEADY * steadyG() * days) {
        return course.get(i).day();
      }
    }
    return course.get(course.size() - 1).day();
  }
}
