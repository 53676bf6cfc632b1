package plyworth.workbench.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Place;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.References;
import plyworth.workbench.host.PluginCatalog;

/** The study that a command works on. */
final class StudyArgument {

  @Parameters(index = "0", paramLabel = "STUDY", description = "Study file, NAME.study.json.")
  private Path file;

  @Option(
      names = "--weighting",
      paramLabel = "NAME",
      description = "Weighting of the study to rank by; the one in use by default.")
  private String weighting;

  @Option(
      names = "--leave-out",
      paramLabel = "PLUGIN",
      description = "Leave a plugin out; may be repeated.")
  private Set<String> leftOut = new LinkedHashSet<>();

  /** Reads the study and checks it against the plugins. */
  Study read(PluginCatalog catalog) throws IOException {
    Study study = StudyFile.open(file).study();
    refuseDangling(file, study, catalog, leftOut);
    return weighting == null ? study : weighedBy(study);
  }

  /** The plugins less those left out. */
  PluginCatalog narrowed(PluginCatalog catalog) {
    return catalog.without(leftOut);
  }

  static void refuseDangling(Path file, Study study, PluginCatalog catalog, Set<String> leftOut) {
    List<References.Dangling> dangling = References.check(study, catalog.without(leftOut), leftOut);
    if (!dangling.isEmpty()) {
      References.Dangling first = dangling.get(0);
      String option =
          first.plugin().map(p -> " On the command line: --leave-out " + p + ".").orElse("");
      throw new DataException(
          new Place(file.toString(), 0, 0, first.path()), first.problem(), first.remedy() + option);
    }
  }

  private Study weighedBy(Study study) {
    return study.weightings().stream()
        .filter(w -> w.name().equals(weighting))
        .findFirst()
        .map(study::with)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    ("the study has no weighting \"" + weighting + "\". It has: ")
                        + String.join(
                            ", ", study.weightings().stream().map(w -> w.name()).toList())));
  }
}
