package plyworth.shared.plant;

import java.util.List;

/**
 * A web that a supplier offers.
 *
 * @param material id of its material
 * @param process empty for a web; for a part of a web the process that makes it one, such as {@code
 *     coextruded}
 * @param widthsMm widths it is delivered in, mm, at least one
 * @param gauges gauges or grammages it is delivered in, at least one
 * @param minimumOrder the least that is delivered
 * @param leadDays days from order to delivery; NaN when not known
 * @param approved whether the plant may use it
 * @param note remark and where the figures come from; may be empty
 */
public record BoughtWeb(
    String material,
    String process,
    List<Span> widthsMm,
    List<AmountSpan> gauges,
    MinimumOrder minimumOrder,
    double leadDays,
    boolean approved,
    String note) {

  /**
   * Checks the lists and the lead time.
   *
   * @throws IllegalArgumentException when one of them is wrong
   */
  public BoughtWeb {
    widthsMm = List.copyOf(widthsMm);
    gauges = List.copyOf(gauges);
    if (widthsMm.isEmpty() || gauges.isEmpty()) {
      throw new IllegalArgumentException(
          "the web of " + material + " has no width or no gauge; name at least one of each");
    }
    if (leadDays < 0 || Double.isInfinite(leadDays)) {
      throw new IllegalArgumentException(
          ("the lead time of " + material + " is " + leadDays)
              + " days; write 0 or more, or nothing when unknown");
    }
  }
}
