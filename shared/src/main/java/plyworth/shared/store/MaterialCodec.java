package plyworth.shared.store;

import java.util.TreeSet;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.material.Material;

/** A material with all its properties. */
final class MaterialCodec {

  private MaterialCodec() {}

  static Material read(Fields fields) {
    return new Material(
        fields.text("id"),
        fields.text("name"),
        fields.text("family"),
        new TreeSet<>(fields.texts("kinds")),
        fields.text("basis"),
        fields.texts("aliases"),
        PropertyCodec.read(fields, "properties", PropertyCodec.MATERIAL_UNITS),
        fields.text("note", ""));
  }

  static Json write(Material material) {
    return new Entries()
        .put("id", material.id())
        .put("name", material.name())
        .put("family", material.family())
        .put("kinds", material.kinds(), Json::of)
        .put("basis", material.basis())
        .put("aliases", material.aliases(), Json::of)
        .put("properties", material.properties(), PropertyCodec::write)
        .put("note", material.note())
        .json();
  }
}
