package plyworth.workbench.engine.graph;

import java.util.BitSet;
import plyworth.shared.structure.NeighbourRule;

/**
 * One rule, read along a layer list from the outside in, with a small number as its memory. Layers
 * are numbers of a {@link LayerAlphabet}; every kind is looked up there once, when the reader is
 * made.
 */
sealed interface RuleReader {

  /** The memory before the first layer. */
  int START = 0;

  /** Whether the rule forbids this layer after what was read. */
  boolean forbids(int memory, int layer);

  /** The memory once this layer is read, forbidden or not. */
  int after(int memory, int layer);

  /** Whether the rule forbids that the list ends after what was read. */
  default boolean forbidsEnd(int memory) {
    return false;
  }

  /** The reader of a rule. */
  static RuleReader of(NeighbourRule rule, LayerAlphabet layers) {
    if (rule instanceof NeighbourRule.Neighbours r) {
      return new Neighbours(layers.matching(r.outer()), layers.matching(r.inner()));
    } else if (rule instanceof NeighbourRule.WebBondWeb r) {
      BitSet outer = layers.matching(r.outer());
      BitSet inner = layers.matching(r.inner());
      return r.bond() == null
          ? new Unbonded(outer, inner, layers.webs(), layers.bonds())
          : new Bonded(outer, layers.matching(r.bond()), inner, layers.webs(), layers.bonds());
    } else if (rule instanceof NeighbourRule.Face r) {
      return new Face(layers.matching(r.outer()), layers.matching(r.inner()));
    } else if (rule instanceof NeighbourRule.Outermost r) {
      return new Outermost(layers.matching(r.only()));
    } else if (rule instanceof NeighbourRule.Innermost r) {
      return new Innermost(layers.matching(r.only()));
    } else if (rule instanceof NeighbourRule.AtMost r) {
      return new AtMost(layers.matching(r.kind()), r.n());
    } else if (rule instanceof NeighbourRule.AtLeast r) {
      return new AtLeast(layers.matching(r.kind()), r.n());
    }
    throw new IllegalArgumentException("no reader for the rule " + rule.id());
  }

  /** Remembers whether the last layer is the outer of the two. */
  record Neighbours(BitSet outer, BitSet inner) implements RuleReader {
    @Override
    public boolean forbids(int memory, int layer) {
      return memory == 1 && inner.get(layer);
    }

    @Override
    public int after(int memory, int layer) {
      return outer.get(layer) ? 1 : 0;
    }
  }

  /** Remembers whether the last web is the outer one and no bond stands since. */
  record Unbonded(BitSet outer, BitSet inner, BitSet webs, BitSet bonds) implements RuleReader {
    @Override
    public boolean forbids(int memory, int layer) {
      return memory == 1 && webs.get(layer) && inner.get(layer);
    }

    @Override
    public int after(int memory, int layer) {
      if (webs.get(layer)) {
        return outer.get(layer) ? 1 : 0;
      }
      return bonds.get(layer) ? 0 : memory;
    }
  }

  /** Remembers whether the last web is the outer one (1), and such a bond stands since (2). */
  record Bonded(BitSet outer, BitSet bond, BitSet inner, BitSet webs, BitSet bonds)
      implements RuleReader {
    @Override
    public boolean forbids(int memory, int layer) {
      return memory == 2 && webs.get(layer) && inner.get(layer);
    }

    @Override
    public int after(int memory, int layer) {
      if (webs.get(layer)) {
        return outer.get(layer) ? 1 : 0;
      }
      return memory == 1 && bonds.get(layer) && bond.get(layer) ? 2 : memory;
    }
  }

  /** Remembers whether all that was read is the outer of the two (1), or that it is not (2). */
  record Face(BitSet outer, BitSet inner) implements RuleReader {
    @Override
    public boolean forbids(int memory, int layer) {
      return memory == 1 && inner.get(layer);
    }

    @Override
    public int after(int memory, int layer) {
      return memory == START && outer.get(layer) ? 1 : 2;
    }
  }

  /** Remembers whether anything was read. */
  record Outermost(BitSet only) implements RuleReader {
    @Override
    public boolean forbids(int memory, int layer) {
      return memory == START && !only.get(layer);
    }

    @Override
    public int after(int memory, int layer) {
      return 1;
    }
  }

  /** Remembers whether the last layer may stand innermost. */
  record Innermost(BitSet only) implements RuleReader {
    @Override
    public boolean forbids(int memory, int layer) {
      return false;
    }

    @Override
    public int after(int memory, int layer) {
      return only.get(layer) ? 1 : 0;
    }

    @Override
    public boolean forbidsEnd(int memory) {
      return memory == 0;
    }
  }

  /** Counts up to the most allowed. */
  record AtMost(BitSet kind, int n) implements RuleReader {
    @Override
    public boolean forbids(int memory, int layer) {
      return memory == n && kind.get(layer);
    }

    @Override
    public int after(int memory, int layer) {
      return kind.get(layer) ? Math.min(memory + 1, n) : memory;
    }
  }

  /** Counts up to the fewest allowed. */
  record AtLeast(BitSet kind, int n) implements RuleReader {
    @Override
    public boolean forbids(int memory, int layer) {
      return false;
    }

    @Override
    public int after(int memory, int layer) {
      return kind.get(layer) ? Math.min(memory + 1, n) : memory;
    }

    @Override
    public boolean forbidsEnd(int memory) {
      return memory < n;
    }
  }
}
