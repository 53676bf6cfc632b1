package plyworth.shared.store;

import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessRole;

/** A process with all its figures. */
final class ProcessCodec {

  private ProcessCodec() {}

  static Process read(Fields fields) {
    return new Process(
        fields.text("id"),
        fields.text("name"),
        fields.choice("role", ProcessRole.class),
        PropertyCodec.read(fields, "figures", PropertyCodec.PROCESS_UNITS),
        fields.text("note", ""));
  }

  static Json write(Process process) {
    return new Entries()
        .put("id", process.id())
        .put("name", process.name())
        .put("role", process.role())
        .put("figures", process.figures(), PropertyCodec::write)
        .put("note", process.note())
        .json();
  }
}
