package plyworth.shared.store;

import java.util.List;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.material.MaterialLibrary;
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
            MeasurementCodec.reading(fields, id));
    result.requireIn(library);
    return result;
  }

  private CandidateResult candidate(Fields fields) {
    return new CandidateResult(
        fields.value("structure", json -> reader.structure(Fields.text(json))),
        MeasurementCodec.read(fields));
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
    return MeasurementCodec.write(entries, result.reading());
  }

  private static Json write(CandidateResult result) {
    return MeasurementCodec.write(
        new Entries()
            .put("structure", result.structure().toString())
            .put("criterion", result.reading().figure()),
        result.reading());
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
