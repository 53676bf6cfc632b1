package plyworth.shared.store;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.data.Choice;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.route.ProcessLibrary;

/** Properties of materials and figures of processes, each with its unit and its sources. */
final class PropertyCodec {

  /** Units of the material properties in the library, by property id. */
  static final Map<String, String> MATERIAL_UNITS =
      units(MaterialLibrary.standard().all().stream().map(m -> m.properties()).toList());

  /** Units of the process figures in the library, by figure id. */
  static final Map<String, String> PROCESS_UNITS =
      units(ProcessLibrary.standard().processes().values().stream().map(p -> p.figures()).toList());

  private PropertyCodec() {}

  private static Map<String, String> units(List<Map<String, Property>> subjects) {
    Map<String, String> units = new HashMap<>();
    subjects.forEach(s -> s.values().forEach(p -> units.put(p.id(), p.unit())));
    return Map.copyOf(units);
  }

  /** Reads an object of properties; {@code units} are those that known ids must have. */
  static Map<String, Property> read(Fields fields, String key, Map<String, String> units) {
    Map<String, Property> properties = new TreeMap<>();
    Map<String, Json> entries = fields.map(key, json -> json);
    entries.forEach(
        (id, json) -> properties.put(id, Fields.read(json, f -> property(f, id, units))));
    return properties;
  }

  private static Property property(Fields fields, String id, Map<String, String> units) {
    String unit = fields.text("unit");
    if (!unit.equals(units.getOrDefault(id, unit))) {
      throw new DataException(
          fields.value("unit").place(),
          id + " is given in " + unit,
          "Give it in " + units.get(id) + ".");
    }
    return new Property(
        id, unit, new ArrayList<>(fields.objects("figures", PropertyCodec::figure)));
  }

  private static Sourced figure(Fields fields) {
    Range range =
        new Range(
            fields.numberOrUnknown("low"),
            fields.numberOrUnknown("typical"),
            fields.numberOrUnknown("high"));
    return new Sourced(
        fields.numberOrUnknown("at"),
        range,
        fields.choice("kind", SourceKind.class),
        fields.text("source"));
  }

  static Json write(Property property) {
    return new Entries()
        .put("unit", property.unit())
        .put("figures", property.points(), PropertyCodec::write)
        .json();
  }

  private static Json write(Sourced figure) {
    Entries entries = new Entries();
    if (!Double.isNaN(figure.at())) {
      entries.put("at", figure.at());
    }
    return entries
        .put("low", figure.range().low())
        .put("typical", figure.range().typical())
        .put("high", figure.range().high())
        .put("kind", Choice.plain(figure.kind()))
        .put("source", figure.source())
        .json();
  }
}
