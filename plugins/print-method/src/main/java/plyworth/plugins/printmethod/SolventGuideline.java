package plyworth.plugins.printmethod;

/**
 * The control techniques guideline for flexible package printing of the US EPA (2006): an ink
 * passes at 0.8 kg of volatile organics per kg of solids or at 0.16 kg per kg of material;
 * otherwise it is controlled (limits from memory).
 */
public final class SolventGuideline {

  static final double PER_SOLIDS = 0.8;
  static final double PER_MATERIAL = 0.16;

  private SolventGuideline() {}

  /** Whether an ink passes without control: either limit suffices. */
  public static boolean passes(MakeUp ink) {
    return ink.solventPerSolids() <= PER_SOLIDS || ink.solvent() <= PER_MATERIAL;
  }

  /** Overall control that brings an ink to the limit per solids; 0 when it passes. */
  public static double controlNeeded(MakeUp ink) {
    return passes(ink) ? 0 : 1 - PER_SOLIDS / ink.solventPerSolids();
  }
}
