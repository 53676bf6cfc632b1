package plyworth.plugins.printmethod;

import plyworth.shared.data.Choice;

/** What a gate says of print on a surface, gravest first. */
public enum Verdict {
  /** The method does not suit the surface. */
  NONE,
  /** A figure is missing: the gate cannot be judged. */
  UNKNOWN,
  /** It may work and needs a test. */
  CONDITIONAL,
  /** Usual practice. */
  NORMAL;

  /** The graver of the two. */
  public Verdict worse(Verdict other) {
    return compareTo(other) <= 0 ? this : other;
  }

  /** The class of the suitability criterion: 0 none, 1 conditional, 2 normal; NaN unknown. */
  public double figure() {
    return switch (this) {
      case NONE -> 0;
      case UNKNOWN -> Double.NaN;
      case CONDITIONAL -> 1;
      case NORMAL -> 2;
    };
  }

  /** The name in plain spelling. */
  public String plain() {
    return Choice.plain(this);
  }
}
