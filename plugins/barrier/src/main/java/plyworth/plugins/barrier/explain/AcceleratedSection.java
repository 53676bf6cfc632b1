package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.pack.AcceleratedStorage;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.BarrierParameters;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** When to take samples from a chamber, or why a chamber shows nothing. */
final class AcceleratedSection {

  private static final double WEEK = 7;

  private AcceleratedSection() {}

  static Section of(BarrierModel model, Structure structure) {
    AcceleratedStorage storage = AcceleratedStorage.of(model, structure);
    return storage
        .refusal()
        .<Section>map(reason -> new Note(reason, Text.of("basis.accelerated")))
        .orElseGet(() -> table(model, storage));
  }

  private static Section table(BarrierModel model, AcceleratedStorage storage) {
    List<List<Object>> rows = new ArrayList<>();
    for (AcceleratedStorage.Pull pull : storage.pulls()) {
      rows.add(
          List.of(pull.storageDay(), pull.chamberDay(), pull.chamberDay() / WEEK, pull.times()));
    }
    List<Text> columns =
        List.of(
            Text.of("column.storage-day"),
            Text.of("column.chamber-day"),
            Text.of("column.chamber-week"),
            Text.of("column.faster"));
    return new Table(
        Text.of(
            "section.accelerated",
            model.context().parameter(BarrierParameters.CHAMBER_TEMPERATURE),
            model.context().parameter(BarrierParameters.CHAMBER_HUMIDITY),
            storage.mechanism().orElseThrow().word()),
        columns,
        rows,
        Text.of("basis.accelerated"));
  }
}
