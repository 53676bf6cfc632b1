package plyworth.shared.store;

import java.util.List;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.material.MaterialLibrary;
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
    String id = fields.text("property");
    MaterialResult result =
        new MaterialResult(
            fields.value("material", json -> library.require(Fields.text(json))).id(),
            fields.numberOrUnknown("at"),
            reading(fields, id));
    result.requireIn(library);
    return result;
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
