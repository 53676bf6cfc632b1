package plyworth.workbench.command.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.command.CommandLineRun;

class MaterialsCommandTest {

  @TempDir Path folder;
  private Path study;
  private Path csv;
  private Path to;

  @BeforeEach
  void writeStudy() {
    study = SmallStudy.file(folder, "mint", SmallStudy.few());
    csv = folder.resolve("materials.csv");
    to = folder.resolve("new.study.json");
  }

  @Test
  void theMaterialsOfAStudyAreListed() {
    CommandLineRun run = CommandLineRun.of("materials", study);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("ldpe", "Low-density polyethylene", "used; as in the library");
    assertThat(run.out()).doesNotContain("bopet ");
  }

  @Test
  void whatIsExportedIsReadBackAndWrittenIntoANewStudy() throws IOException {
    assertThat(CommandLineRun.of("materials", study, "--export", csv).code()).isZero();
    CommandLineRun same = CommandLineRun.of("materials", study, "--import", csv);
    assertThat(same.out()).startsWith("0 properties are changed or added");
    Files.writeString(
        csv,
        Files.readString(csv)
            .replaceAll("(?m)^ldpe,price,.*$", "ldpe,price,,1.4,1.5,1.6,EUR/kg,measured,an offer"));
    CommandLineRun run = CommandLineRun.of("materials", study, "--import", csv, "--to", to);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("ldpe/price", "then  1.5 (1.4 to 1.6) EUR/kg", "an offer");
    assertThat(
            StudyFile.open(to)
                .study()
                .materialsBefore()
                .require("ldpe")
                .figure("price", Double.NaN)
                .typical())
        .isEqualTo(1.5);
  }

  @Test
  void aWrongLineIsNamedAndNothingIsWritten() throws IOException {
    Files.writeString(
        csv,
        "material,property,at,low,typical,high,unit,kind,source\n"
            + "ldpe,price,,1.4,1.5,1.6,EUR/kg,measured,an offer\n"
            + "ldpe,density,,920,910,930,kg/m3,measured,an offer\n");
    CommandLineRun run = CommandLineRun.of("materials", study, "--import", csv, "--to", to);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains("materials.csv, line 3, ldpe, density: a range needs");
    assertThat(to).doesNotExist();
  }

  @Test
  void aMaterialThatTheStudyDoesNotHaveIsBrought() throws IOException {
    Files.writeString(
        csv,
        "material,property,at,low,typical,high,unit,kind,source,"
            + "name,family,kinds,basis,aliases,note\n"
            + "cast-film,density,,890,900,910,kg/m3,measured,ISO 1183,"
            + "Cast film,polypropylene,film web,film,,\n");
    CommandLineRun run = CommandLineRun.of("materials", study, "--import", csv, "--to", to);
    assertThat(run.out())
        .contains("cast-film is new: Cast film", "family polypropylene; kinds film, web");
    assertThat(StudyFile.open(to).study().materialsBefore().find("cast-film")).isPresent();
  }

  @Test
  void nothingIsOverwrittenAndNothingIsWrittenFromNothing() throws IOException {
    Files.writeString(csv, "");
    assertThat(CommandLineRun.of("materials", study, "--export", csv).err())
        .contains("exists already. Name a new file.");
    assertThat(CommandLineRun.of("materials", study, "--to", to).err())
        .contains("Name a file of figures: --import.");
  }
}
