package plyworth.workbench.engine.graph;

import java.util.List;
import java.util.Set;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;

/**
 * Which candidates are counted: all, or those that run through some options of a position.
 *
 * @param any whether all are
 * @param position index of the position
 * @param options indices of the options
 * @param nothing whether <i>nothing</i> is among them
 */
record OptionChoice(boolean any, int position, Set<Integer> options, boolean nothing) {

  /** Every candidate. */
  static final OptionChoice ANY = new OptionChoice(true, -1, Set.of(), false);

  /** Those through some options. */
  static OptionChoice of(List<Position> positions, int position, Set<Integer> options) {
    List<Option> offered = positions.get(position).options();
    boolean nothing = options.stream().anyMatch(o -> offered.get(o).equals(Option.NOTHING));
    return new OptionChoice(false, position, Set.copyOf(options), nothing);
  }

  /** Whether a chosen option is used where a layer in one slot follows one in another. */
  boolean between(Slot from, Slot to) {
    return to.position() == position
        ? options.contains(to.option())
        : nothing && from.position() < position && position < to.position();
  }

  /** Whether a chosen option is used inside the last slot. */
  boolean after(Slot last) {
    return nothing && last.position() < position;
  }
}
