package plyworth.shared.scoring;

/** What came out for one criterion on one structure. */
public sealed interface Outcome {

  /**
   * A figure.
   *
   * @param figure finite, in the unit of the criterion
   */
  record Scored(double figure) implements Outcome {
    /**
     * Refuses what is no figure.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public Scored {
      if (!Double.isFinite(figure)) {
        throw new IllegalArgumentException("a scored figure must be finite, not " + figure);
      }
    }
  }

  /**
   * The criterion does not apply to the brief.
   *
   * @param why the reason
   */
  record NotApplicable(Text why) implements Outcome {}

  /**
   * The figure is unknown because data is missing.
   *
   * @param subject id of the material, {@code @process} or figure that lacks it
   * @param property id of the missing property
   */
  record DataMissing(String subject, String property) implements Outcome {}

  /** The figure, NaN when there is none. */
  default double orUnknown() {
    return this instanceof Scored scored ? scored.figure() : Double.NaN;
  }
}
