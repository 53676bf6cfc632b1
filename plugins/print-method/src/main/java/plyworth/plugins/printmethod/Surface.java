package plyworth.plugins.printmethod;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import plyworth.shared.data.Csv;
import plyworth.shared.data.Resources;

/**
 * A class of printable surfaces.
 *
 * @param id identifier
 * @param tags a layer with one of them belongs here
 * @param face {@code paper}, {@code film}, {@code foil}, {@code oxide}, {@code metal}, {@code
 *     primer}, or {@code overprint}, which is not printed
 * @param water least treatment level for water-based ink, mN/m; NaN when none is known or needed
 * @param solvent the same for solvent-based ink
 * @param cured the same for cured ink
 * @param delivered least level of a web ordered treated for print, mN/m; NaN when it is not treated
 * @param absorbed share of the water of an ink that soaks in
 * @param webLimit highest web temperature on press, °C; NaN when unknown
 * @param source where the figures come from
 */
record Surface(
    String id,
    Set<String> tags,
    String face,
    double water,
    double solvent,
    double cured,
    double delivered,
    double absorbed,
    double webLimit,
    String source) {

  private static final List<String> HEADER =
      List.of(
          "surface",
          "tags",
          "face",
          "water",
          "solvent",
          "cured",
          "delivered",
          "absorbed",
          "web-limit",
          "source");

  private static final List<Surface> TABLE = read();

  /**
   * The first class of the table that a layer belongs to.
   *
   * @param kinds tags of the layer
   * @param coatedFace whether its metallised or oxide-coated face is meant
   */
  static Surface of(Set<String> kinds, boolean coatedFace) {
    for (Surface surface : TABLE) {
      boolean coated = surface.face.equals("oxide") || surface.face.equals("metal");
      if ((coatedFace || !coated) && kinds.stream().anyMatch(surface.tags::contains)) {
        return surface;
      }
    }
    return TABLE.get(TABLE.size() - 1);
  }

  /** Least treatment level for a kind of ink, mN/m; NaN when none is known or needed. */
  double required(InkKind kind) {
    return switch (kind) {
      case WATER -> water;
      case SOLVENT -> solvent;
      case CURED -> cured;
    };
  }

  /** Whether ink holds by wetting; paper absorbs and a primer is made for ink. */
  boolean needsWetting() {
    return !face.equals("paper") && !face.equals("primer");
  }

  /**
   * The print position.
   *
   * @param reverse whether the ink lies inside the surface
   * @param primed whether a primer lies between
   */
  String position(boolean reverse, boolean primed) {
    return switch (face) {
      case "paper", "film" -> (reverse ? "reverse-" : "surface-") + face;
      case "primer" -> "foil-primed";
      default -> face + (primed ? "-primed" : "-bare");
    };
  }

  private static List<Surface> read() {
    String text = Resources.text(Surface.class, "surfaces.csv");
    return Csv.read(text, "surfaces.csv", HEADER).stream().map(Surface::of).toList();
  }

  private static Surface of(Csv.Row row) {
    return new Surface(
        row.text("surface"),
        Set.copyOf(Arrays.asList(row.text("tags").split(" "))),
        row.text("face"),
        row.numberOrUnknown("water"),
        row.numberOrUnknown("solvent"),
        row.numberOrUnknown("cured"),
        row.numberOrUnknown("delivered"),
        row.number("absorbed"),
        row.numberOrUnknown("web-limit"),
        row.text("source"));
  }
}
