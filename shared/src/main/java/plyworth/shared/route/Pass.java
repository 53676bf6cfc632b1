package plyworth.shared.route;

import java.util.List;

/**
 * One run of the web through a machine.
 *
 * @param process what is done
 * @param layers indexes of the layers that enter here, ascending, counted from the outside; empty
 *     for slitting when every layer entered before
 */
public record Pass(Process process, List<Integer> layers) {

  /** Copies the list. */
  public Pass {
    layers = List.copyOf(layers);
  }
}
