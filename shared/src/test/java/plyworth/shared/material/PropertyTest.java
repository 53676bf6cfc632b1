package plyworth.shared.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.quantity.Range;

class PropertyTest {

  /** Oxygen permeability of two EVOH grades at 20 °C along relative humidity; from memory. */
  private static final double[] HUMIDITY = {0, 50, 65, 75, 85, 95, 100};

  private static final double[] MOL_32 = {4, 5, 8, 14, 30, 120, 400};
  private static final double[] MOL_44 = {18, 22, 30, 42, 75, 150, 250};

  private static Property along(double[] figures) {
    List<Sourced> points = new ArrayList<>();
    for (int i = HUMIDITY.length - 1; i >= 0; i--) {
      points.add(point(HUMIDITY[i], figures[i]));
    }
    return new Property("o2-permeability", "cm3.um/(m2.day.bar)", points);
  }

  private static Sourced point(double at, double figure) {
    return new Sourced(at, Range.exactly(figure), SourceKind.MEMORY, "from memory");
  }

  /** One and its inverse, times the other, is not always one in floating point. */
  @Test
  void aTabulatedPointIsGivenAsItStandsAndItsNeighbourhoodToo() {
    Property factor =
        new Property(
            "o2-humidity-factor",
            "1",
            List.of(
                new Sourced(0, new Range(0.54545, 0.8181818, 1.2273), SourceKind.MEMORY, "memory"),
                point(50, 1),
                point(100, 9)));
    assertThat(factor.at(50)).isEqualTo(Range.exactly(1));
    assertThat(factor.at(Math.nextDown(50.0)).typical()).isCloseTo(1, withinPercentage(1e-9));
  }

  /** The interpolation of ln P against humidity, worked by hand from the two tables above. */
  @ParameterizedTest
  @CsvSource({"60, 6.8399, 27.053", "80, 20.494, 56.125", "90, 60.000, 106.07"})
  void logarithmIsInterpolated(double humidity, double mol32, double mol44) {
    assertThat(along(MOL_32).at(humidity).typical()).isCloseTo(mol32, withinPercentage(0.01));
    assertThat(along(MOL_44).at(humidity).typical()).isCloseTo(mol44, withinPercentage(0.01));
  }

  @Test
  void gradesChangePlacesNearSaturation() {
    assertThat(along(MOL_32).at(95).typical()).isLessThan(along(MOL_44).at(95).typical());
    assertThat(along(MOL_32).at(100).typical()).isGreaterThan(along(MOL_44).at(100).typical());
  }

  @Test
  void outsideTheTableTheEndsHold() {
    assertThat(along(MOL_32).at(-5).typical()).isEqualTo(4);
    assertThat(along(MOL_32).at(120).typical()).isEqualTo(400);
    assertThat(along(MOL_32).at(Double.NaN).typical()).isEqualTo(4);
  }

  @Test
  void figureItselfIsInterpolatedNextToZero() {
    Property pinholes = new Property("pinholes", "1/m2", List.of(point(10, 100), point(20, 0)));
    assertThat(pinholes.at(15).typical()).isEqualTo(50);
  }

  @Test
  void severalFiguresMustSayWhatTheyHoldFor() {
    Sourced always = point(Double.NaN, 1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Property("x", "1", List.of(always, point(2, 1))))
        .withMessageContaining("property x");
    assertThatIllegalArgumentException().isThrownBy(() -> new Property("x", "1", List.of()));
  }

  @Test
  void figureWithoutSourceIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Sourced(Double.NaN, Range.exactly(1), SourceKind.PUBLISHED, " "));
  }
}
