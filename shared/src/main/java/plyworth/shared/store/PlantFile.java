package plyworth.shared.store;

import java.nio.file.Path;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.JsonText;
import plyworth.shared.plant.Plant;
import plyworth.shared.study.Study;

/**
 * A plant in a file of its own, {@code NAME.plant.json}, for many studies: {@code { "schema": 6,
 * "plant": { … } }} with the section that a study file may carry, in the schema of study files.
 */
public final class PlantFile {

  /** The first schema that knew a plant. */
  private static final int FIRST = 6;

  private PlantFile() {}

  /**
   * Reads a file.
   *
   * @param study for which it is read: its webs may be of materials that the study brings along
   * @throws DataException when it cannot be read, or is wrong
   */
  public static Plant open(Path file, Study study) {
    String text = TextFile.read(file);
    PlantCodec codec = new PlantCodec(study.materialsAtHand(), study.processesAtHand());
    return Fields.read(
        JsonText.read(text, TextFile.name(file)),
        fields -> {
          checkSchema(fields);
          return fields.object(StudyCodec.PLANT, codec::read);
        });
  }

  private static void checkSchema(Fields fields) {
    int schema = fields.whole(Migrations.KEY);
    if (schema < FIRST || schema > Migrations.CURRENT) {
      throw new DataException(
          fields.value(Migrations.KEY).place(),
          "the file has schema " + schema + "; this program reads " + FIRST,
          schema > FIRST ? "Open it with a newer version of Plyworth." : "Mend the number.");
    }
  }
}
