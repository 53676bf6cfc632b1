package plyworth.plugins.printmethod;

/** Water that paper takes up from water-based ink. */
public final class Moisture {

  /** Rise of web moisture above which paper cockles and curls, points (common practice). */
  static final double MOST_POINTS = 2;

  /** Grammage under which water-based print on paper needs a test, g/m² (common practice). */
  static final double LIGHT_PAPER = 45;

  private Moisture() {}

  /**
   * Rise of the moisture of the web, percentage points: α·w/g.
   *
   * @param absorbed share α of the water that soaks in
   * @param water put down, g/m²
   * @param grammage of the paper, g/m²
   */
  public static double points(double absorbed, double water, double grammage) {
    return 100 * absorbed * water / grammage;
  }

  /** Whether water-based print on this paper is usual or needs a test. */
  public static Verdict judge(double points, double grammage) {
    boolean usual = points <= MOST_POINTS && grammage >= LIGHT_PAPER;
    return usual ? Verdict.NORMAL : Verdict.CONDITIONAL;
  }
}
