package plyworth.shared.route;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.data.Csv;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Resources;
import plyworth.shared.data.Spelling;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyTable;
import plyworth.shared.structure.Layer;

/**
 * The processes at hand, by id.
 *
 * @param processes processes by id
 */
public record ProcessLibrary(Map<String, Process> processes) {

  /** Id of the last pass of every route. */
  public static final String SLITTING = "slitting";

  private static final List<String> HEADER = List.of("id", "name", "role", "note");

  /** Copies, order kept. */
  public ProcessLibrary {
    processes = Collections.unmodifiableMap(new LinkedHashMap<>(processes));
  }

  /** The processes that come with the product, read strictly from their data files. */
  public static ProcessLibrary standard() {
    return Standard.LIBRARY;
  }

  /** This library, with the given processes added or put in place of those of the same id. */
  public ProcessLibrary with(Collection<Process> more) {
    Map<String, Process> merged = new LinkedHashMap<>(processes);
    more.forEach(p -> merged.put(p.id(), p));
    return new ProcessLibrary(merged);
  }

  /** The process of that id. */
  public Optional<Process> find(String id) {
    return Optional.ofNullable(processes.get(id));
  }

  /**
   * The process of that id.
   *
   * @throws IllegalArgumentException when there is none, with the nearest id
   */
  public Process require(String id) {
    Process process = processes.get(id);
    if (process == null) {
      throw new IllegalArgumentException(
          ("the process \"@" + id + "\" is not known. ")
              + Spelling.suggestion(id, processes.keySet()));
    }
    return process;
  }

  /** What puts the layer there: {@link ProcessRole#WEB} for a layer without process. */
  public ProcessRole role(Layer layer) {
    return layer.process().isEmpty() ? ProcessRole.WEB : require(layer.process()).role();
  }

  /** Reads a library from the texts of its two tables. */
  static ProcessLibrary read(String processes, String figures) {
    Map<String, Map<String, Property>> byProcess =
        PropertyTable.read(figures, "process-figures.csv", "process", "figure");
    Map<String, Process> read = new LinkedHashMap<>();
    for (Csv.Row row : Csv.read(processes, "processes.csv", HEADER)) {
      String id = row.text("id");
      read.put(
          id,
          new Process(
              id,
              row.text("name"),
              role(row),
              byProcess.getOrDefault(id, Map.of()),
              row.text("note")));
    }
    ProcessLibrary library = new ProcessLibrary(read);
    byProcess.keySet().forEach(library::require);
    return library;
  }

  private static ProcessRole role(Csv.Row row) {
    String wanted = row.text("role").toUpperCase(Locale.ROOT).replace('-', '_');
    for (ProcessRole role : ProcessRole.values()) {
      if (role.name().equals(wanted)) {
        return role;
      }
    }
    throw new DataException(row.place(), "\"" + row.text("role") + "\" is not a role", "");
  }

  private static final class Standard {
    static final ProcessLibrary LIBRARY =
        read(
            Resources.text(ProcessLibrary.class, "processes.csv"),
            Resources.text(ProcessLibrary.class, "process-figures.csv"));
  }
}
