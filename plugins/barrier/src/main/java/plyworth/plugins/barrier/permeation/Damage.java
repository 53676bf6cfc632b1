package plyworth.plugins.barrier.permeation;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.brief.Handling;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

/**
 * How many times more a layer transmits once the pack is formed, filled and handled as the brief
 * says. A multiplier stands for a shipped pack; of one left in peace it counts by its square root,
 * of one treated roughly by its power one and a half, of a flat sheet not at all (judgement: ASTM
 * F392 wears the same layer by 20 partial, 20 full and 270 full strokes).
 */
public final class Damage {

  /**
   * Layers whose barrier suffers. Multipliers on the transmission after about 20 full flex cycles
   * of ASTM F392, or at creases: from memory, wide; the standard is the geometric middle.
   */
  enum Kind {
    /** Aluminium foil of 7 to 9 µm between paper and polyethylene. */
    FOIL("damage-foil", 3, 100),
    /** Coated or metallised paper at its creases. */
    COATED_PAPER("damage-coated-paper", 5, 100),
    /** Aluminium or silicon oxide on film. */
    OXIDE("damage-oxide-coated", 3, 30),
    /** Vapour-deposited metal on film. */
    METALLISED("damage-metallised", 2, 10);

    private final String parameter;
    private final double low;
    private final double high;

    Kind(String parameter, double low, double high) {
      this.parameter = parameter;
      this.low = low;
      this.high = high;
    }

    /** Id of the parameter with the multiplier. */
    String parameter() {
      return parameter;
    }

    /** The geometric middle of the band, two digits or three. */
    double standard() {
      return Math.rint(10 * Math.sqrt(low * high)) / 10;
    }

    /** The band around a set multiplier of 1 or more, as wide as the one it comes from. */
    Range around(double set) {
      double middle = standard();
      return new Range(Math.max(1, set * low / middle), set, set * high / middle);
    }
  }

  private final ScoringContext context;
  private final Map<Kind, Double> multipliers = new EnumMap<>(Kind.class);

  /**
   * The damage in a context.
   *
   * @param shared the damage that calibration finds over its standard: a multiplier m becomes 1 +
   *     (m − 1) times it, so that a layer never lets through less than its flat sheet
   */
  Damage(ScoringContext context, double shared) {
    this.context = context;
    for (Kind kind : Kind.values()) {
      double set = context.parameter(kind.parameter());
      String input = "barrier/" + kind.parameter();
      double shipped = context.draw().figure(input, kind.around(set));
      double handled = Math.pow(shipped, severity(context.brief().handling()));
      multipliers.put(kind, 1 + (handled - 1) * shared);
    }
  }

  private static double severity(Handling handling) {
    return switch (handling) {
      case FLAT -> 0;
      case FORMED -> 0.5;
      case SHIPPED -> 1;
      case ROUGH -> 1.5;
    };
  }

  /** The multiplier of a layer; 1 for what bends without harm. */
  public double multiplier(Layer layer, Layer outer) {
    return kind(layer, outer).map(multipliers::get).orElse(1.0);
  }

  /**
   * What suffers in a layer. A barrier coating cracks with the paper it lies on: one that follows
   * directly inside a paper, or inside another coating, which is taken to lie on paper too.
   *
   * @param outer the outer neighbour; null for the outermost layer
   */
  Optional<Kind> kind(Layer layer, Layer outer) {
    boolean barrier = is(layer, "barrier");
    if (is(layer, "foil")) {
      return Optional.of(Kind.FOIL);
    }
    if (barrier && (is(layer, "paper") || is(layer, "coating") && onPaper(outer))) {
      return Optional.of(Kind.COATED_PAPER);
    }
    if (is(layer, "oxide-coated")) {
      return Optional.of(Kind.OXIDE);
    }
    return is(layer, "metallised") ? Optional.of(Kind.METALLISED) : Optional.empty();
  }

  private boolean onPaper(Layer outer) {
    return outer != null && (is(outer, "paper") || is(outer, "coating"));
  }

  private boolean is(Layer layer, String kind) {
    return context.material(layer).kinds().contains(kind);
  }
}
