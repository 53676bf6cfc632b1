package plyworth.shared.brief;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.data.Spelling;

/**
 * Long-term test climates of the climatic zones, and the accelerated one, of stability testing (ICH
 * stability guidelines; zones after Grimm 1985; zone IV parted into IVa and IVb as on a stability
 * page).
 */
public final class ClimateZones {

  private static final Map<String, Climate> ZONES = zones();

  private ClimateZones() {}

  private static Map<String, Climate> zones() {
    Map<String, Climate> zones = new LinkedHashMap<>();
    zones.put("I", new Climate("zone I, 21 °C 45 % RH", 21, 45));
    zones.put("II", new Climate("zone II, 25 °C 60 % RH", 25, 60));
    zones.put("III", new Climate("zone III, 30 °C 35 % RH", 30, 35));
    zones.put("IVa", new Climate("zone IVa, 30 °C 65 % RH", 30, 65));
    zones.put("IVb", new Climate("zone IVb, 30 °C 75 % RH", 30, 75));
    zones.put("accelerated", new Climate("accelerated, 40 °C 75 % RH", 40, 75));
    return Collections.unmodifiableMap(zones);
  }

  /** The climates by zone. */
  public static Map<String, Climate> all() {
    return ZONES;
  }

  /**
   * The climate of a zone.
   *
   * @param zone {@code I}, {@code II}, {@code III}, {@code IVa}, {@code IVb} or {@code accelerated}
   * @throws IllegalArgumentException for any other, with the known ones
   */
  public static Climate require(String zone) {
    Climate climate = ZONES.get(zone);
    if (climate == null) {
      throw new IllegalArgumentException(
          "\"" + zone + "\" is not a climate zone. " + Spelling.suggestion(zone, ZONES.keySet()));
    }
    return climate;
  }

  /** The zone that a climate is that of, name included; empty for any other climate. */
  public static Optional<String> of(Climate climate) {
    return ZONES.entrySet().stream()
        .filter(z -> z.getValue().equals(climate))
        .map(Map.Entry::getKey)
        .findFirst();
  }
}
