package plyworth.plugins.barrier.pack;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import plyworth.plugins.barrier.permeation.LayerTransmission;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.material.Sourced;
import plyworth.shared.structure.Layer;

/**
 * The property a layer's transmission is read from.
 *
 * @param property the property
 * @param origin its point nearest the layer's gauge
 * @param figure the figure at that gauge, in the unit of the property
 */
public record LayerData(Property property, Sourced origin, double figure) {

  /** What is known of a layer; empty when nothing is. */
  public static Optional<LayerData> of(BarrierModel model, Layer layer, Permeant permeant) {
    Material material = model.context().material(layer);
    double gauge = model.context().gaugeUm(layer);
    return Stream.of(permeant.rateId(), permeant.permeabilityId(), LayerTransmission.PINHOLES)
        .flatMap(id -> material.property(id).stream())
        .findFirst()
        .map(
            property ->
                new LayerData(
                    property,
                    nearest(property, gauge),
                    model.context().property(layer, property.id())));
  }

  private static Sourced nearest(Property property, double gauge) {
    return property.points().stream()
        .min(Comparator.comparingDouble(p -> Double.isNaN(p.at()) ? 0 : Math.abs(p.at() - gauge)))
        .orElseThrow();
  }
}
