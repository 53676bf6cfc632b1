package plyworth.shared.scoring;

import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import plyworth.shared.structure.Layer;

/**
 * A scorer taken apart so that millions of candidates can be scored, and bounded, without calling
 * the plugin per layer.
 *
 * <p>Every layer contributes a small state that depends on it and its outer neighbour alone; states
 * are joined, outside to inside, by the declared {@link Join}s; a final function turns blocks of
 * joined states into criteria. Joining the contributions of a whole structure and finishing gives
 * what {@link Scorer#score} gives, or encloses it for criteria that are not local. Unknown
 * contributions are NaN and make the criteria that use them NaN.
 *
 * <p>All methods must be pure and safe from several threads.
 */
public interface Layerwise {

  /**
   * A form for some criteria alone, where that is less work: what only the others need may be
   * missing from its state, and their columns hold anything. Blocking rules are those of this form,
   * and so, for candidates that nothing blocks, are provided figures and the figures of the
   * criteria that are asked for. Those of blocked candidates may be anything: nobody reads them.
   *
   * @param criteria ids of criteria
   */
  default Layerwise only(Set<String> criteria) {
    return this;
  }

  /** The parts of the state, in order. */
  List<StatePart> state();

  /**
   * The component that a criterion is, as it stands, where its figure adds up over the layers. What
   * adds up is bounded all at once rather than each for itself, so a search of criteria that are
   * named here looks at few candidates.
   *
   * @param criterion id of a criterion that this form gives
   * @return index of a component that is joined by {@link Join#SUM} and that {@link #finish} hands
   *     over unchanged; empty when the criterion is anything else
   */
  default OptionalInt sumOf(String criterion) {
    return OptionalInt.empty();
  }

  /**
   * Writes the contribution of a layer.
   *
   * @param layer the layer
   * @param outer its outer neighbour; null for the outermost layer
   * @param state receives the components, {@link StatePart#size(List)} of them, preset to the
   *     neutral state
   */
  void contribute(Layer layer, Layer outer, double[] state);

  /**
   * Turns joined states into criteria, blocking bits and provided figures, for all {@link
   * Block#size} columns. Blocking bits are those of the whole structure, or the candidate is left
   * {@link Block#undecided}. The figures of one that is blocked may enclose those of the whole
   * structure as widely as is easiest.
   */
  void finish(Block block);

  /**
   * The same over intervals: given that each component lies between two figures, between which
   * figures each criterion must lie, which blocking rules must fire and which may.
   */
  void bound(BoundsBlock block);
}
