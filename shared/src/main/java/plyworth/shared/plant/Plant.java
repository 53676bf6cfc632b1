package plyworth.shared.plant;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a converter can make and buy.
 *
 * @param name name on screens
 * @param centres machines of the plant, then outside services; among equals the first is used
 * @param webs webs on offer
 * @param note remark and where the figures come from; may be empty
 */
public record Plant(String name, List<WorkCentre> centres, List<BoughtWeb> webs, String note) {

  /** A set of them is kept as the bits of a whole number. */
  private static final int MOST_CENTRES = 50;

  /**
   * Copies the lists, machines first.
   *
   * @throws IllegalArgumentException when nothing is named, too many machines are, or an id stands
   *     twice
   */
  public Plant {
    centres = centres.stream().sorted(Comparator.comparing(WorkCentre::outside)).toList();
    webs = List.copyOf(webs);
    if (name.isBlank()) {
      throw new IllegalArgumentException("the plant has no name");
    }
    if (centres.isEmpty() || webs.isEmpty()) {
      throw new IllegalArgumentException(
          "a plant without machines and services, or without webs, makes nothing; name them");
    }
    if (centres.size() > MOST_CENTRES) {
      throw new IllegalArgumentException(
          ("the plant names " + centres.size() + " machines and services; ")
              + ("name " + MOST_CENTRES + " or fewer, those that come into question"));
    }
    Set<String> seen = new HashSet<>();
    for (WorkCentre centre : centres) {
      if (!seen.add(centre.id())) {
        throw new IllegalArgumentException(
            "two machines or services have the id \"" + centre.id() + "\"; rename one");
      }
    }
  }
}
