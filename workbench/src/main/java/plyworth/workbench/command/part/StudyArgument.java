package plyworth.workbench.command.part;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Place;
import plyworth.shared.data.Spelling;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.References;
import plyworth.workbench.analysis.StudyPlaces;
import plyworth.workbench.host.PluginCatalog;

/** The study that a command works on. */
public final class StudyArgument {

  @Parameters(index = "0", paramLabel = "STUDY", description = "Study file, NAME.study.json.")
  private Path file;

  @Option(
      names = "--weighting",
      paramLabel = "NAME",
      description = "Weighting of the study to rank by; the one in use by default.")
  private String weighting;

  @Mixin private PlantChoice plant;

  @Mixin private PluginChoice plugins;

  Path file() {
    return file;
  }

  /** Reads the study and checks it against the plugins. */
  Study read(PluginCatalog catalog) {
    Study study = plant.in(open(file));
    plugins.check(catalog, study);
    refuseDangling(file, study, catalog, plugins.leftOut());
    return weighting == null ? study : study.with(chosen(study));
  }

  /** The plugins less those left out. */
  PluginCatalog narrowed(PluginCatalog catalog) {
    return plugins.of(catalog);
  }

  /** Reads a study; messages name the file as it was typed. */
  public static Study open(Path file) {
    try {
      return StudyFile.open(file).study();
    } catch (DataException e) {
      Place at = e.place();
      throw new DataException(
          new Place(file.toString(), at.line(), at.column(), at.path()), e.problem(), e.remedy());
    }
  }

  /** Refuses a study that speaks of what is not there. */
  public static void refuseDangling(
      Path file, Study study, PluginCatalog catalog, Set<String> leftOut) {
    List<References.Dangling> dangling = References.check(study, catalog.without(leftOut), leftOut);
    if (!dangling.isEmpty()) {
      throw StudyPlaces.refusal(file, dangling.stream().map(StudyArgument::onCommandLine).toList());
    }
  }

  /** What is wrong, and what to type to do without the plugin that is not there. */
  private static References.Dangling onCommandLine(References.Dangling wrong) {
    String option =
        wrong.plugin().map(p -> " On the command line: --leave-out " + p + ".").orElse("");
    return new References.Dangling(
        wrong.path(), wrong.plugin(), wrong.problem(), wrong.remedy() + option);
  }

  private Weighting chosen(Study study) {
    return study.weightings().stream()
        .filter(w -> w.name().equals(weighting))
        .findFirst()
        .orElseThrow(() -> unknownWeighting(study));
  }

  private WrongInput unknownWeighting(Study study) {
    List<String> known = study.weightings().stream().map(Weighting::name).toList();
    return new WrongInput(
        "--weighting: "
            + file
            + " has no weighting \""
            + weighting
            + "\". "
            + Spelling.suggestion(weighting, known));
  }
}
