package plyworth.shared.store;

import java.util.List;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.StructureText;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;

/**
 * Reads layer notation and makes sure that every material and process in it is at hand.
 *
 * @param materials materials at hand
 * @param processes processes at hand
 */
record StructureReader(MaterialLibrary materials, ProcessLibrary processes) {

  private static final String NOTHING = Option.NOTHING.toString();

  Structure structure(String notation) {
    return new StructureText(materials, processes).read(notation);
  }

  Position position(Fields fields) {
    return new Position(fields.text("title"), fields.list("options", this::option));
  }

  private Option option(Json json) {
    String notation = Fields.text(json);
    return notation.equals(NOTHING)
        ? Option.NOTHING
        : new Option(List.copyOf(structure(notation).layers()));
  }

  static Json write(Position position) {
    return new Entries()
        .put("title", position.title())
        .put("options", position.options(), o -> Json.of(o.toString()))
        .json();
  }
}
