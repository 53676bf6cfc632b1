package plyworth.shared.plant;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Who runs passes: a machine of the plant, or an outside service that asks a charge.
 *
 * @param id identifier: lower case, digits, hyphens
 * @param name name on screens
 * @param processes ids of the processes it runs, at least one
 * @param widthMm widths of web it takes, mm
 * @param webs gauges or grammages of the webs it takes; empty for no limit
 * @param layers amounts that it puts down, one layer at a time; empty for no limit
 * @param printStations colours and varnishes it prints in one run
 * @param solvents whether inks and adhesives with solvent may run on it
 * @param days days from one pass to the next: queue, set-up, run and cure; for a service the way
 *     there and back as well
 * @param charge what a service asks; empty for a machine of the plant
 * @param note remark and where the figures come from; may be empty
 */
public record WorkCentre(
    String id,
    String name,
    Set<String> processes,
    Span widthMm,
    List<AmountSpan> webs,
    List<AmountSpan> layers,
    int printStations,
    boolean solvents,
    double days,
    Optional<Charge> charge,
    String note) {

  /**
   * Checks the id, the processes and the days.
   *
   * @throws IllegalArgumentException when one of them is wrong
   */
  public WorkCentre {
    if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException(
          "\"" + id + "\" is not an id; write lower-case letters, digits and hyphens");
    }
    processes = Collections.unmodifiableSet(new TreeSet<>(processes));
    webs = List.copyOf(webs);
    layers = List.copyOf(layers);
    if (processes.isEmpty()) {
      throw new IllegalArgumentException(id + " runs no process; name at least one");
    }
    if (printStations < 0) {
      throw new IllegalArgumentException(
          id + " has " + printStations + " print stations; write 0 or more");
    }
    if (!(days >= 0) || !Double.isFinite(days)) {
      throw new IllegalArgumentException(
          "a pass on " + id + " takes " + days + " days; write 0 or more");
    }
  }

  /** Whether it is a service outside the plant. */
  public boolean outside() {
    return charge.isPresent();
  }
}
