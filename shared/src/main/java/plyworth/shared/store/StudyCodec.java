package plyworth.shared.store;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.data.Spelling;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.structure.NeighbourRules;
import plyworth.shared.study.Decision;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;

/** A whole study in the current schema. */
final class StudyCodec {

  /** Key of the plant. */
  static final String PLANT = "plant";

  private static final String RESULTS = "results";
  private static final String REMARKS = "remarks";

  private StudyCodec() {}

  static Study read(Fields fields) {
    fields.whole(Migrations.KEY);
    List<Material> materials = fields.objects("materials", MaterialCodec::read);
    distinct(fields, "materials", materials.stream().map(Material::id).toList());
    List<Process> processes = fields.objects("processes", ProcessCodec::read);
    distinct(fields, "processes", processes.stream().map(Process::id).toList());
    MaterialLibrary library = MaterialLibrary.standard().with(materials);
    ProcessLibrary passes = ProcessLibrary.standard().with(processes);
    StructureReader reader = new StructureReader(library, passes);
    ResultsCodec found = new ResultsCodec(library, reader);
    return new Study(
        fields.text("title"),
        fields.text("question", ""),
        fields.object("brief", BriefCodec::read),
        fields.objects("positions", reader::position),
        fields.list("rules", NeighbourRules::read),
        fields.value("baseline", json -> reader.structure(Fields.text(json))),
        fields.objects("measurements", MeasurementCodec::read),
        fields.objects("weightings", PreferenceCodec::weighting),
        inUse(fields),
        PreferenceCodec.valueFunctions(fields),
        fields.objects("limits", PreferenceCodec::limit),
        PreferenceCodec.settings(fields),
        fields.has("seed") ? fields.whole("seed") : Study.STANDARD_SEED,
        materials,
        processes,
        fields.has(PLANT)
            ? Optional.of(fields.object(PLANT, new PlantCodec(library, passes)::read))
            : Optional.empty(),
        fields.has(RESULTS) ? fields.object(RESULTS, found::read) : Results.NONE,
        fields.has(REMARKS) ? fields.objects(REMARKS, found::remark) : List.of(),
        fields.has("decision")
            ? fields.object("decision", f -> decision(f, reader))
            : Decision.OPEN,
        fields.text("notes", ""));
  }

  private static void distinct(Fields fields, String key, List<String> ids) {
    Set<String> seen = new HashSet<>();
    for (String id : ids) {
      if (!seen.add(id)) {
        throw new DataException(
            fields.value(key).place(), "\"" + id + "\" stands twice", "Remove one of the two.");
      }
    }
  }

  /** The weighting in use, refused where it stands when there is none of that name. */
  private static String inUse(Fields fields) {
    String name = fields.text("weighting");
    List<String> known =
        Fields.list(fields.value("weightings"), json -> Fields.of(json).text("name"));
    if (!known.contains(name)) {
      throw new DataException(
          fields.value("weighting").place(),
          "the weighting in use, \"" + name + "\", is not among the weightings",
          Spelling.suggestion(name, known));
    }
    return name;
  }

  private static Decision decision(Fields fields, StructureReader reader) {
    String chosen =
        fields.value(
            "structure",
            json -> {
              String notation = Fields.text(json);
              return notation.isBlank() ? "" : reader.structure(notation).toString();
            });
    return new Decision(chosen, fields.text("reasons", ""));
  }

  static Json write(Study study) {
    Entries entries =
        new Entries()
            .put(Migrations.KEY, Migrations.CURRENT)
            .put("title", study.title())
            .put("question", study.question())
            .put("brief", BriefCodec.write(study.brief()))
            .put("positions", study.positions(), StructureReader::write)
            .put("rules", study.rules(), NeighbourRules::write)
            .put("baseline", study.baseline().toString())
            .put("measurements", study.measurements(), MeasurementCodec::write)
            .put("weightings", study.weightings(), PreferenceCodec::write)
            .put("weighting", study.weighting())
            .put("value_functions", study.valueFunctions(), PreferenceCodec::write)
            .put("limits", study.limits(), PreferenceCodec::write)
            .put("settings", study.settings(), PreferenceCodec::write)
            .put("seed", study.seed());
    study.plant().ifPresent(plant -> entries.put(PLANT, PlantCodec.write(plant)));
    if (!study.results().equals(Results.NONE)) {
      entries.put(RESULTS, ResultsCodec.write(study.results()));
    }
    if (!study.remarks().isEmpty()) {
      entries.put(REMARKS, study.remarks(), ResultsCodec::write);
    }
    return entries
        .put("materials", study.materials(), MaterialCodec::write)
        .put("processes", study.processes(), ProcessCodec::write)
        .put("decision", write(study.decision()))
        .put("notes", study.notes())
        .json();
  }

  private static Json write(Decision decision) {
    return new Entries()
        .put("structure", decision.structure())
        .put("reasons", decision.reasons())
        .json();
  }
}
