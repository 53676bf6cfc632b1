package plyworth.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The candidate graph as it is drawn. */
class FlowDrawingTest {

  private static final double WIDTH = 700;
  private static final double HEIGHT = 420;

  private static final FlowColumns COLUMNS =
      new FlowColumns(
          List.of(
              new FlowColumns.Column(
                  "1  Outer",
                  List.of(box("paper 50", 30, "paper"), box("film 20", 10, "polyester"))),
              new FlowColumns.Column(
                  "2  Inner", List.of(box("nothing", 0, ""), box("resin 20", 40, "polyethylene")))),
          List.of(new FlowColumns.Ribbon(0, 0, 1, 30, 30), new FlowColumns.Ribbon(0, 1, 1, 10, 0)),
          40);

  private static FlowColumns.Box box(String label, long candidates, String family) {
    return new FlowColumns.Box(label, Long.toString(candidates), family, candidates);
  }

  private static FlowDrawing drawing() {
    return new FlowDrawing(COLUMNS, ChartTheme.PAPER, Optional.empty());
  }

  private static FlowPlaces places() {
    return new FlowPlaces(COLUMNS, ChartTheme.PAPER.font(), WIDTH, HEIGHT);
  }

  @Test
  void aBoxIsFoundWhereItStands() {
    FlowDrawing.At film = new FlowDrawing.At(0, 1);
    Rectangle2D place = drawing().place(film, WIDTH, HEIGHT);
    assertThat(drawing().boxAt(place.getCenterX(), place.getCenterY(), WIDTH, HEIGHT))
        .contains(film);
    assertThat(drawing().boxAt(1, 1, WIDTH, HEIGHT)).isEmpty();
  }

  @Test
  void aRibbonIsFoundBetweenItsBoxes() {
    FlowPlaces.Strip strip = places().strips().get(1);
    double middle = strip.topRight() + strip.thick() / 2;
    assertThat(drawing().ribbonAt(strip.right() - 1, middle, WIDTH, HEIGHT))
        .contains(COLUMNS.ribbons().get(1));
  }

  @Test
  void ribbonsAreAsThickAsTheirCandidatesAreMany() {
    List<FlowPlaces.Strip> strips = places().strips();
    assertThat(strips.get(0).thick()).isCloseTo(3 * strips.get(1).thick(), within(1e-9));
    assertThat(strips.get(0).chosen()).isEqualTo(strips.get(0).thick());
    assertThat(strips.get(1).chosen()).isZero();
  }

  @Test
  void everythingStandsInsideTheAreaAndNothingOverlaps() {
    FlowPlaces places = places();
    for (int c = 0; c < 2; c++) {
      assertThat(places.box(c, 1).getMaxY()).isLessThanOrEqualTo(HEIGHT);
      assertThat(places.box(c, 1).getMaxX()).isLessThanOrEqualTo(WIDTH);
      assertThat(places.box(c, 0).intersects(places.box(c, 1))).isFalse();
    }
    assertThat(places.box(0, 0).getMaxX()).isLessThan(places.box(1, 0).getX());
  }

  @Test
  void aBoxWithoutCandidatesStillHasRoomForItsWords() {
    assertThat(places().box(1, 0).getHeight()).isGreaterThan(2 * places().line());
  }

  @Test
  void nothingIsDrawnOfNoCandidates() {
    FlowColumns none =
        new FlowColumns(
            List.of(new FlowColumns.Column("1  Outer", List.of(box("paper 50", 0, "paper")))),
            List.of(),
            0);
    FlowDrawing drawing = new FlowDrawing(none, ChartTheme.PAPER, Optional.empty());
    assertThat(inked(drawing)).isPositive();
    assertThat(drawing.place(new FlowDrawing.At(0, 0), WIDTH, HEIGHT).getHeight()).isLessThan(60);
  }

  @Test
  void theSelectedStandsOut() {
    FlowDrawing.At paper = new FlowDrawing.At(0, 0);
    FlowDrawing selected = new FlowDrawing(COLUMNS, ChartTheme.PAPER, Optional.of(paper));
    Rectangle2D place = selected.place(paper, WIDTH, HEIGHT);
    int x = (int) place.getMaxX() - 4;
    int y = (int) place.getMinY() + 4;
    assertThat(picture(selected).getRGB(x, y)).isNotEqualTo(picture(drawing()).getRGB(x, y));
  }

  private static BufferedImage picture(FlowDrawing drawing) {
    BufferedImage image = new BufferedImage((int) WIDTH, (int) HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    drawing.draw(g, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
    g.dispose();
    return image;
  }

  private static long inked(FlowDrawing drawing) {
    BufferedImage image = picture(drawing);
    int ground = ChartTheme.PAPER.background().getRGB();
    return IntStream.of(
            image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth()))
        .filter(colour -> colour != ground)
        .count();
  }
}
