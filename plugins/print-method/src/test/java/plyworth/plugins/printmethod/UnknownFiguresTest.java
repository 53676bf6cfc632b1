package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import plyworth.shared.material.Property;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.SampleStructures;

/** Unknown is never zero: it names what is missing. */
class UnknownFiguresTest {

  private static final String GRAVURE = "ink-nc 1.5 g/m2 @gravure-solvent / kraft-paper 60 g/m2";

  private static ProcessLibrary without(String processId, String figureId) {
    Process whole = ProcessLibrary.standard().require(processId);
    Map<String, Property> figures = new TreeMap<>(whole.figures());
    figures.remove(figureId);
    return ProcessLibrary.standard()
        .with(List.of(new Process(whole.id(), whole.name(), whole.role(), figures, whole.note())));
  }

  @Test
  void filmWithoutSurfaceEnergyCannotBeJudged() {
    String structure = "ink-nc 1 g/m2 @gravure-solvent / " + SampleStructures.BARE_FILM + " 20 um";
    Bound untreated = Bound.with(Map.of("treated-webs", 0.0));
    assertThat(untreated.score(structure).outcomes().get("suitability"))
        .isEqualTo(new Outcome.DataMissing(SampleStructures.BARE_FILM, "surface-energy"));
    assertThat(untreated.score(structure).outcomes().get("drying-heat"))
        .isEqualTo(new Outcome.DataMissing(SampleStructures.BARE_FILM, "heat-capacity"));
  }

  @Test
  void pressWithoutCaptureLeavesTheEmissionUnknownButNotTheInput() {
    Bound bound = Bound.with(without("gravure-solvent", "capture"));
    assertThat(bound.score(GRAVURE).outcomes().get("solvent-emitted"))
        .isEqualTo(new Outcome.DataMissing("@gravure-solvent", "capture"));
    assertThat(bound.figure("solvent-input", GRAVURE)).isPositive();
  }

  @Test
  void oneMissingFractionIsTheRest() {
    Bound whole = Bound.standard();
    Bound bound = Bound.with(without("gravure-solvent", "ink-solids"));
    assertThat(bound.figure("solvent-input", GRAVURE))
        .isCloseTo(whole.figure("solvent-input", GRAVURE), within(1e-9));
  }
}
