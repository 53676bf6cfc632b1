package plyworth.plugins.barrier.pack;

import java.util.Set;

/** How much light a layer lets through, as a class (common practice). */
public final class LightClass {

  /** Class of what lets light through. */
  public static final int TRANSPARENT = 0;

  static final int ATTENUATING = 1;
  static final int OPAQUE = 2;

  private LightClass() {}

  /** Foil stops light; paper, metal deposits and opaque films weaken it; print gets no credit. */
  public static int of(Set<String> kinds) {
    if (kinds.contains("foil")) {
      return OPAQUE;
    }
    return kinds.contains("opaque") || kinds.contains("metallised") ? ATTENUATING : TRANSPARENT;
  }
}
