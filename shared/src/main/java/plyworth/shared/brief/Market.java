package plyworth.shared.brief;

/**
 * Where and when the pack is sold.
 *
 * @param region region whose rules apply, in lower case: {@code eu}, {@code uk}, {@code us}, …
 * @param launchYear first year on the market
 * @param endYear last year of the platform's life
 */
public record Market(String region, int launchYear, int endYear) {

  /** Checks the years. */
  public Market {
    Check.between("the launch year", launchYear, 1990, 2100, "");
    if (endYear < launchYear) {
      throw new IllegalArgumentException(
          "the platform ends in " + endYear + ", before its launch in " + launchYear);
    }
  }
}
