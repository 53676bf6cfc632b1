package plyworth.workbench.command.part;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Place;
import plyworth.shared.store.PlantFile;
import plyworth.shared.study.Study;

/** In which plant a study is to be made. */
public final class PlantChoice {

  @Option(
      names = "--plant",
      paramLabel = "FILE",
      description = "Judge by the plant in NAME.plant.json in place of the study's own.")
  private Path file;

  /** The study in the plant that was asked for; messages name the file as it was typed. */
  public Study in(Study study) {
    if (file == null) {
      return study;
    }
    try {
      return study.with(PlantFile.open(file, study));
    } catch (DataException e) {
      Place at = e.place();
      throw new DataException(
          new Place(file.toString(), at.line(), at.column(), at.path()), e.problem(), e.remedy());
    }
  }
}
