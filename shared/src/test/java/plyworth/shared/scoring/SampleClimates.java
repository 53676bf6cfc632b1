package plyworth.shared.scoring;

import java.util.List;
import java.util.stream.IntStream;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.ClimateZones;

/** One invented climate in each form that a study may write it in, and a zone. */
public final class SampleClimates {

  private SampleClimates() {}

  /** All of them. */
  public static List<Climate> all() {
    return List.of(
        new Climate("cellar", 12, 80), ClimateZones.require("IVb"), months(), twoSeasons());
  }

  /** Twelve months with a warm summer. */
  public static Climate months() {
    return new Climate(
        "port town",
        IntStream.range(0, 12)
            .mapToObj(m -> new Season(365.0 / 12, 15 + 2 * Math.min(m, 12 - m), 80 - 2 * m))
            .toList());
  }

  /** A wet season and a dry one. */
  public static Climate twoSeasons() {
    return new Climate("monsoon", List.of(new Season(120, 30, 85), new Season(245, 26, 55)));
  }
}
