package plyworth.workbench.desktop.brief;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import plyworth.shared.brief.Pack;

/**
 * Where the seals of a flat pack lie and where its web is folded, in mm from its upper left corner;
 * the usual make-up of each format (common practice).
 *
 * @param pack the pack
 */
record PackShape(Pack pack) {

  /** Outline of the flat pack. */
  Rectangle2D outline() {
    return new Rectangle2D.Double(0, 0, pack.widthMm(), pack.lengthMm());
  }

  /** The seals of the flat pack. */
  List<Rectangle2D> seals() {
    double width = pack.widthMm();
    double length = pack.lengthMm();
    double seal = pack.sealWidthMm();
    List<Rectangle2D> seals = new ArrayList<>();
    seals.add(new Rectangle2D.Double(0, 0, width, seal));
    if (pack.format() != Pack.Format.SACHET_FOLDED) {
      seals.add(new Rectangle2D.Double(0, length - seal, width, seal));
    }
    if (alongMiddle()) {
      double overlap = pack.overlapMm();
      double x = pack.format() == Pack.Format.STICK ? (width - overlap) / 2 : width / 2;
      seals.add(new Rectangle2D.Double(x, 0, overlap, length));
    } else {
      seals.add(new Rectangle2D.Double(0, 0, seal, length));
      seals.add(new Rectangle2D.Double(width - seal, 0, seal, length));
    }
    return seals;
  }

  /** Whether a lap or a fin runs along the middle of the back. */
  boolean alongMiddle() {
    return pack.format() == Pack.Format.STICK || pack.format() == Pack.Format.PILLOW;
  }

  /** Outline of the web that one pack takes. */
  Rectangle2D web() {
    return new Rectangle2D.Double(0, 0, pack.laneWidthMm(), pack.repeatMm());
  }

  /** Where the web is folded, or cut in two, across its width. */
  double[] folds() {
    double width = pack.widthMm();
    double back = (width + pack.overlapMm()) / 2;
    double fin = pack.overlapMm();
    return switch (pack.format()) {
      case STICK -> new double[] {back, back + width};
      case PILLOW ->
          DoubleStream.of(0, width / 2, 1.5 * width, 2 * width).map(x -> fin + x).toArray();
      case SACHET_FOUR_SIDE -> new double[] {width};
      case SACHET_FOLDED -> new double[] {pack.lengthMm()};
    };
  }

  /** Whether the web is cut, not folded, at {@link #folds}. */
  boolean cut() {
    return pack.format() == Pack.Format.SACHET_FOUR_SIDE;
  }
}
