package plyworth.workbench.analysis;

import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.data.Spelling;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.quantity.Unit;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.PluginCatalog;

/**
 * The units in which figures of properties are kept.
 *
 * @param byProperty unit by id of the property, of all that a plugin reads or a material has
 */
record KeptUnits(Map<String, String> byProperty) {

  static KeptUnits of(MaterialLibrary library, PluginCatalog catalog) {
    Map<String, String> units = new TreeMap<>();
    library.all().forEach(m -> m.properties().values().forEach(p -> units.put(p.id(), p.unit())));
    PropertyReaders.of(catalog)
        .byProperty()
        .forEach((id, readers) -> units.put(id, readers.get(0).definition().unit()));
    return new KeptUnits(units);
  }

  /**
   * A property in the unit in which it is kept, to nine digits where its own is another.
   *
   * @throws IllegalArgumentException when nobody knows it, or its unit measures something else
   */
  Property kept(Property read) {
    String unit = byProperty.get(read.id());
    if (unit == null) {
      throw new IllegalArgumentException(
          ("no plugin reads a property \"" + read.id() + "\", and no material has it. ")
              + Spelling.suggestion(read.id(), byProperty.keySet()));
    }
    return unit.equals(read.unit()) ? read : converted(read, unit);
  }

  private static Property converted(Property read, String unit) {
    Unit from = Unit.named(read.unit()).orElseThrow(() -> wrong(read, unit));
    Unit to =
        Unit.named(unit).filter(u -> u.kind() == from.kind()).orElseThrow(() -> wrong(read, unit));
    return new Property(
        read.id(), unit, read.points().stream().map(point -> converted(point, from, to)).toList());
  }

  private static Sourced converted(Sourced point, Unit from, Unit to) {
    Range range = point.range();
    return new Sourced(
        point.at(),
        new Range(
            Digits.exported(from.to(to, range.low())),
            Digits.exported(from.to(to, range.typical())),
            Digits.exported(from.to(to, range.high()))),
        point.kind(),
        point.source());
  }

  private static IllegalArgumentException wrong(Property read, String unit) {
    return new IllegalArgumentException(
        read.id() + " is given in \"" + read.unit() + "\". Give it in \"" + unit + "\".");
  }
}
