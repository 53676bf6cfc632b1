package plyworth.plugins.recyclability;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.StatePart;

/**
 * The layerwise state: grammage by {@link Group}, then what the outermost and the innermost layer
 * is, among those that are paper or polymer.
 *
 * <p>Polymer means any layer with a polymer or a polymer dispersion in it; ink, adhesive, lacquer,
 * wax, foil and vapour-deposited metal do not count. A coated paper that is one layer carries its
 * coating on the inside (common practice). Polymer outside of all paper gives the outer face,
 * polymer inside of all paper the inner face; two paper webs are taken together, and polymer
 * between them alone counts as one side.
 */
final class Ledger {

  /** Component that tells what is outermost. */
  static final int OUTER_FACE = Group.COUNT;

  /** Component that tells what is innermost. */
  static final int INNER_FACE = Group.COUNT + 1;

  /** Number of components. */
  static final int SIZE = Group.COUNT + 2;

  /** A face of paper. */
  static final double PAPER_FACE = 0;

  /** A face of polymer. */
  static final double POLYMER_FACE = 1;

  /** The parts, in order. */
  static final List<StatePart> PARTS = parts();

  private static final Group[] GROUP_OF = new Group[Family.COUNT];

  static {
    for (Family family : Family.values()) {
      GROUP_OF[family.ordinal()] = family.group;
    }
  }

  private Ledger() {}

  private static List<StatePart> parts() {
    List<StatePart> parts = new ArrayList<>();
    for (Group group : Group.values()) {
      parts.add(new StatePart(group.name().toLowerCase(Locale.ROOT), Join.SUM));
    }
    parts.add(new StatePart("outer face", Join.OUTERMOST));
    parts.add(new StatePart("inner face", Join.INNERMOST));
    return List.copyOf(parts);
  }

  /** The state of no layer. */
  static double[] neutral() {
    double[] state = new double[SIZE];
    StatePart.neutral(PARTS, state);
    return state;
  }

  /** The state of one layer of the given grammages by family. */
  static double[] contribution(double[] gsm) {
    double[] state = neutral();
    contribute(gsm, state);
    return state;
  }

  /** Writes the state of one layer into a neutral one. */
  static void contribute(double[] gsm, double[] state) {
    boolean paper = false;
    boolean polymer = false;
    for (int k = 0; k < gsm.length; k++) {
      Group group = GROUP_OF[k];
      state[group.ordinal()] += gsm[k];
      paper |= group.kind == Group.Kind.PAPER && gsm[k] > 0;
      polymer |= group.kind == Group.Kind.PLASTIC && gsm[k] > 0;
    }
    if (paper || polymer) {
      state[OUTER_FACE] = paper ? PAPER_FACE : POLYMER_FACE;
      state[INNER_FACE] = polymer ? POLYMER_FACE : PAPER_FACE;
    }
  }

  /** Joins an outer and an inner piece. */
  static double[] join(double[] outer, double[] inner) {
    double[] both = new double[SIZE];
    StatePart.join(PARTS, outer, inner, both);
    return both;
  }
}
