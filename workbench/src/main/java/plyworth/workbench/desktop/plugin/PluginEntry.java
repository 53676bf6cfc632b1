package plyworth.workbench.desktop.plugin;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.study.PluginSettings;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginFault;
import plyworth.workbench.host.Sentences;

/**
 * A plugin that is loaded, was refused, or is asked for and not there.
 *
 * @param name its id; the name of its file where the id is unknown
 * @param loaded the plugin; empty when it was refused or is not there
 * @param state how it stands
 * @param reason what is wrong with it; empty when nothing is
 * @param origin jar or folder it came from; empty when it is not there
 */
public record PluginEntry(
    String name, Optional<LoadedPlugin> loaded, State state, String reason, Optional<Path> origin) {

  /** How a plugin stands in the study on screen. */
  public enum State {
    /** Its criteria are measured. */
    AT_WORK,
    /** The study does without it. */
    LEFT_OUT,
    /** It failed while it was asked, and is left out. */
    FAULTY,
    /** It could not be loaded. */
    REFUSED,
    /** The study speaks of it, and it is not there. */
    MISSING
  }

  /** All that there is to say of plugins: the loaded ones first. */
  public static List<PluginEntry> all(Session session) {
    List<PluginEntry> entries = new ArrayList<>();
    List<PluginFault> faults =
        session.ranked().map(Ranked::scored).map(s -> s.faults()).orElse(List.of());
    Set<String> leftOut = session.study().map(PluginSettings::leftOut).orElse(Set.of());
    for (LoadedPlugin plugin : session.installed().plugins()) {
      Optional<PluginFault> fault =
          faults.stream().filter(f -> f.name().equals(plugin.id())).findFirst();
      State state =
          leftOut.contains(plugin.id())
              ? State.LEFT_OUT
              : fault.isPresent() ? State.FAULTY : State.AT_WORK;
      entries.add(
          new PluginEntry(
              plugin.id(),
              Optional.of(plugin),
              state,
              fault.map(PluginFault::reason).orElse(""),
              Optional.of(plugin.origin())));
    }
    for (PluginFault fault : session.installed().faults()) {
      entries.add(
          new PluginEntry(
              fault.name(),
              Optional.empty(),
              State.REFUSED,
              fault.reason(),
              Optional.of(fault.origin())));
    }
    missing(session)
        .forEach(
            id ->
                entries.add(
                    new PluginEntry(id, Optional.empty(), State.MISSING, "", Optional.empty())));
    return entries;
  }

  private static List<String> missing(Session session) {
    return session.dangling().stream()
        .flatMap(dangling -> dangling.plugin().stream())
        .distinct()
        .toList();
  }

  /** The name on screens. */
  public String title() {
    return loaded
        .map(LoadedPlugin::plugin)
        .map(p -> Sentences.of(p, p.card().title(), Language.inForce().locale()))
        .orElse(name);
  }

  /** Whether a study is open that can use it or leave it out. */
  boolean canSwitch(Optional<Study> study) {
    return study.isPresent() && loaded.isPresent();
  }
}
