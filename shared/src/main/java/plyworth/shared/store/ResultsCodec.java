package plyworth.shared.store;

import java.util.List;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.CandidateResult;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Remark;
import plyworth.shared.study.Results;

/** What was found of materials and candidates since a study began, and what was said of them. */
record ResultsCodec(MaterialLibrary library, StructureReader reader) {

  private static final String MATERIALS = "measured_materials";
  private static final String CANDIDATES = "measured_candidates";

  Results read(Fields fields) {
    return new Results(
        fields.has(MATERIALS) ? fields.objects(MATERIALS, this::material) : List.of(),
        fields.has(CANDIDATES) ? fields.objects(CANDIDATES, this::candidate) : List.of());
  }

  private MaterialResult material(Fields fields) {
    Material material = fields.value("material", json -> library.require(Fields.text(json)));
    String id = fields.text("property");
    Measurement reading = reading(fields, id);
    double at = fields.numberOrUnknown("at");
    Property before = material.property(id).orElse(null);
    String unit =
        before == null
            ? PropertyCodec.MATERIAL_UNITS.getOrDefault(id, reading.unit())
            : before.unit();
    if (!reading.unit().equals(unit)) {
      throw new DataException(
          fields.value("unit").place(),
          id + " is given in " + reading.unit(),
          "Give it in " + unit + ".");
    }
    if (before != null && before.points().stream().anyMatch(p -> p.range().low() <= 0)) {
      throw new DataException(
          fields.value("property").place(),
          id + " of " + material.id() + " can be 0, and a reading corrects its logarithm",
          "Write the figure into the material, with its source.");
    }
    return new MaterialResult(material.id(), at, reading);
  }

  private CandidateResult candidate(Fields fields) {
    return new CandidateResult(
        fields.value("structure", json -> reader.structure(Fields.text(json))),
        reading(fields, CriterionId.read(fields.value("criterion"))));
  }

  private static Measurement reading(Fields fields, String figure) {
    return new Measurement(
        figure,
        fields.number("value"),
        fields.text("unit"),
        fields.number("spread"),
        fields.whole("samples"),
        fields.text("method"),
        fields.text("date", ""),
        fields.text("note", ""));
  }

  Remark remark(Fields fields) {
    return new Remark(
        fields.value("structure", json -> reader.structure(Fields.text(json))),
        fields.text("by", ""),
        fields.text("date", ""),
        fields.text("text"));
  }

  static Json write(Results results) {
    return new Entries()
        .put(MATERIALS, results.materials(), ResultsCodec::write)
        .put(CANDIDATES, results.candidates(), ResultsCodec::write)
        .json();
  }

  private static Json write(MaterialResult result) {
    Entries entries =
        new Entries().put("material", result.material()).put("property", result.property());
    if (!Double.isNaN(result.at())) {
      entries.put("at", result.at());
    }
    return write(entries, result.reading());
  }

  private static Json write(CandidateResult result) {
    return write(
        new Entries()
            .put("structure", result.structure().toString())
            .put("criterion", result.reading().figure()),
        result.reading());
  }

  private static Json write(Entries entries, Measurement reading) {
    return entries
        .put("value", reading.value())
        .put("unit", reading.unit())
        .put("spread", reading.spread())
        .put("samples", reading.samples())
        .put("method", reading.method())
        .put("date", reading.date())
        .put("note", reading.note())
        .json();
  }

  static Json write(Remark remark) {
    return new Entries()
        .put("structure", remark.structure().toString())
        .put("by", remark.by())
        .put("date", remark.date())
        .put("text", remark.text())
        .json();
  }
}
