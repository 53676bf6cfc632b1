package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Bending of bonded layers. Expected figures: analytic, E·t³/12 for one strip and the transformed
 * section for laminates, confirmed by numerical integration of E·z² about the neutral axis.
 */
class BeamTest {

  @Test
  void aHomogeneousStripBendsWithThirdPowerOfItsGauge() {
    Beam strip = Beam.of(List.of(Laminates.layer(100, 1000, 0.2, 1000, 2000)));
    assertThat(strip.bending()).isCloseTo(1000 * Math.pow(0.1, 3) / 12, withPercentage(1e-9));
    assertThat(strip.bending()).isCloseTo(0.083333, withPercentage(0.01));
  }

  @Test
  void foilMoreThanDoublesTheStiffnessOfAPaperLaminate() {
    assertThat(Beam.of(Laminates.paperFoil()).bending()).isCloseTo(0.54312, withPercentage(0.1));
    assertThat(Beam.of(Laminates.paperPolyester()).bending())
        .isCloseTo(0.23439, withPercentage(0.1));
    assertThat(Beam.of(Laminates.paperPolyethylene()).bending())
        .isCloseTo(0.12040, withPercentage(0.1));
    assertThat(Beam.of(Laminates.boppDuplex()).bending()).isCloseTo(0.040488, withPercentage(0.1));
  }

  @Test
  void foilCarriesHalfTheTensileStiffnessOfAPaperLaminate() {
    assertThat(Beam.of(Laminates.paperFoil()).tensile()).isCloseTo(849.3, withPercentage(0.1));
    assertThat(Beam.of(Laminates.paperPolyester()).tensile()).isCloseTo(420.3, withPercentage(0.1));
    assertThat(Beam.of(Laminates.paperPolyethylene()).tensile())
        .isCloseTo(366.0, withPercentage(0.1));
    assertThat(Beam.of(Laminates.boppDuplex()).tensile()).isCloseTo(119.7, withPercentage(0.1));
  }

  @Test
  void theNeutralAxisLiesNearTheFoil() {
    assertThat(Beam.of(Laminates.paperFoil()).neutralMm()).isCloseTo(0.056272, within(1e-6));
    assertThat(Beam.of(Laminates.paperPolyester()).neutralMm()).isCloseTo(0.037013, within(1e-6));
  }

  @Test
  void paperIsWeakerAcrossTheMachine() {
    List<LayerFigures> across = new ArrayList<>(Laminates.paperFoil());
    across.set(0, Laminates.paperAcross(60));
    assertThat(Beam.of(across).bending()).isCloseTo(0.28757, withPercentage(0.1));
    assertThat(Beam.of(across).tensile()).isCloseTo(639.3, withPercentage(0.1));
  }

  /** The form of ISO 2493 and ISO 5628, from memory, re-derived from the cantilever. */
  @Test
  void theTwoPointTestReadsTheStiffnessBack() {
    double stiffness = 8.3766;
    assertThat(new Beam(1, 0, stiffness).twoPointForce(50, 15, 38))
        .isCloseTo(0.100, withPercentage(0.1));
    assertThat(1000 * Beam.of(Laminates.paperFoil()).twoPointForce(10, 15, 38))
        .isCloseTo(162.10, withPercentage(0.1));
    assertThat(1000 * Beam.of(Laminates.paperPolyester()).twoPointForce(10, 15, 38))
        .isCloseTo(69.95, withPercentage(0.1));
    assertThat(1000 * Beam.of(Laminates.boppDuplex()).twoPointForce(10, 15, 38))
        .isCloseTo(12.08, withPercentage(0.1));
  }

  /** One Taber unit is 0.0980665 mN·m of moment at 15° over 50 mm of a 38 mm strip. */
  @Test
  void aTaberUnitIsASixthOfAMillinewtonMetre() {
    double force = 0.0980665 / 50;
    double perUnit = force / new Beam(1, 0, 1).twoPointForce(50, 15, 38);
    assertThat(perUnit).isCloseTo(0.16429, withPercentage(0.1));
  }

  @Test
  void splittingALayerChangesNothing() {
    Beam whole = Beam.of(Laminates.paperFoil());
    Beam halved = Beam.of(Laminates.halved(Laminates.paperFoil()));
    assertThat(halved.bending()).isCloseTo(whole.bending(), withPercentage(1e-9));
    assertThat(halved.tensile()).isCloseTo(whole.tensile(), withPercentage(1e-9));
  }

  @Test
  void aLayerWithoutGaugeChangesNothing() {
    List<LayerFigures> layers = new ArrayList<>(Laminates.paperFoil());
    layers.add(2, Laminates.adhesive(0));
    assertThat(Beam.of(layers)).isEqualTo(Beam.of(Laminates.paperFoil()));
  }

  @Test
  void turningTheLaminateOverKeepsItsStiffness() {
    List<LayerFigures> turned = new ArrayList<>(Laminates.polyesterFoil());
    Collections.reverse(turned);
    assertThat(Beam.of(turned).bending())
        .isCloseTo(Beam.of(Laminates.polyesterFoil()).bending(), withPercentage(1e-9));
  }
}
