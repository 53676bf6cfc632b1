package plyworth.workbench.command.part;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plyworth.shared.data.DataException;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.EmptyOffer;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Scored;
import plyworth.workbench.analysis.Search;
import plyworth.workbench.analysis.StudyPlaces;
import plyworth.workbench.analysis.WithoutFaulty;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.TooManyCandidatesException;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.PluginFault;
import plyworth.workbench.host.UnscorableBriefException;

/**
 * A study that was read, on its way to where a command needs it.
 *
 * @param file its file as it was typed
 * @param study the study, under the weighting asked for
 * @param catalog the plugins to work with
 */
public record StudyRun(Path file, Study study, PluginCatalog catalog) {

  /** Reads the study of a command, with the plugins of the program. */
  public static StudyRun of(Program program, StudyArgument argument) {
    PluginCatalog catalog = program.catalog();
    Study study = argument.read(catalog);
    return new StudyRun(argument.file(), study, argument.narrowed(catalog));
  }

  /** Does work with the plugins; again without each that fails. */
  public <T> T work(Function<PluginCatalog, T> work) {
    return WithoutFaulty.run(catalog, work);
  }

  /** The candidates counted. */
  public Compiled compiled(PluginCatalog working) {
    try {
      return Compiled.of(Prepared.of(study, working), () -> false);
    } catch (UnscorableBriefException e) {
      throw new DataException(
          StudyPlaces.of(file, "brief"),
          e.getMessage(),
          "Change the brief, or leave the plugin out: --leave-out " + e.pluginId() + ".");
    } catch (TooManyCandidatesException e) {
      throw new DataException(StudyPlaces.of(file, "positions"), e.getMessage(), "");
    }
  }

  /** The best candidates in order, found in one way or another; refuses a study without any. */
  public Ranked ranked(PluginCatalog working, int top, Optional<Search> search, Progress progress) {
    Compiled compiled = compiled(working);
    if (compiled.paths().count() == 0) {
      throw nothingOnOffer();
    }
    return Ranked.of(compiled, top, search, progress);
  }

  /** As far as these candidates need: their ranks found, or ready to score structures. */
  public Ranked naming(List<NamedCandidate> named, PluginCatalog working, Progress progress) {
    if (named.stream().allMatch(n -> n.structure().isPresent())) {
      return ready(working);
    }
    int top = named.stream().mapToInt(NamedCandidate::top).max().orElse(1);
    return ranked(working, top, Optional.empty(), progress);
  }

  /** Ready to score single structures, without scoring the candidates. */
  public Ranked ready(PluginCatalog working) {
    Compiled counted = compiled(working);
    Compiled empty =
        new Compiled(counted.prepared(), counted.graph(), CompiledGraph.empty(), counted.seconds());
    Ranked ranked = Ranked.of(Scored.of(empty, Progress.NONE), 1);
    Scored scored =
        new Scored(
            ranked.scored().compiled().withPathsOf(counted),
            ranked.scored().table(),
            ranked.scored().sizeStatement(),
            ranked.scored().seconds());
    return ranked.with(scored);
  }

  /** Says which rule leaves nothing on offer. */
  public DataException nothingOnOffer() {
    List<EmptyOffer.Obstacle> obstacles = EmptyOffer.obstacles(study);
    if (obstacles.isEmpty()) {
      return new DataException(
          StudyPlaces.of(file, "positions"),
          "no structure is on offer: together the rules forbid every one",
          "Offer more options; score says what forbids a structure.");
    }
    EmptyOffer.Obstacle first = obstacles.get(0);
    return new DataException(
        StudyPlaces.of(file, "rules[" + first.index() + "]"),
        "no structure is on offer: the rule \"" + first.rule().id() + "\" forbids every one",
        "Without it there are " + first.candidates() + ". Change it, or offer other options.");
  }

  /** Says which plugins are no part of a result, and why. */
  public static void warn(Ranked ranked, PrintWriter err) {
    for (PluginFault fault : ranked.scored().faults()) {
      err.println("plyworth: left out: " + fault.name() + ": " + fault.reason());
    }
  }
}
