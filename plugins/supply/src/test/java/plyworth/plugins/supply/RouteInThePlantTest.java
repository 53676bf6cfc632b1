package plyworth.plugins.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plyworth.shared.plant.Charge;
import plyworth.shared.plant.Plant;
import plyworth.shared.plant.Span;
import plyworth.shared.plant.WorkCentre;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.SampleStructures;
import plyworth.shared.structure.Structure;

/** Who runs the passes of a job; the plant is invented, the sums are worked by hand. */
class RouteInThePlantTest {

  private static final Order STICKS = Order.sticks();

  private static final String PRINTED = "ink-wb 1.5 g/m2 @flexo-water / ";
  private static final String TO_FOIL =
      "kraft-paper 50 g/m2 / ldpe 12 um @extrusion-lamination / aluminium-foil 7 um"
          + " / ldpe 25 um @extrusion-coating";
  private static final String FOIL_ROUTE = PRINTED + TO_FOIL;
  private static final String GRAVURE_ROUTE = "ink-nc 1.5 g/m2 @gravure-solvent / " + TO_FOIL;

  @Test
  void aRouteWithinThePlantCostsNothingOutsideAndWaitsForTheSlowestWeb() {
    Assessment scored = STICKS.score(FOIL_ROUTE);
    assertThat(scored.blocked()).isFalse();
    assertThat(scored.figure("sent-out-per-1000")).isZero();
    assertThat(scored.figure("lead-time"))
        .as("foil, press, twice the extruder, slitter")
        .isEqualTo(42 + 3 + 2 + 2 + 1);
  }

  @Test
  void aPassThatIsSentOutIsNamedWithItsCostAndDays() {
    Assessment scored = STICKS.score(GRAVURE_ROUTE);
    double cost = 600 + 55 * Order.AREA_M2 / 1000;
    assertThat(scored.blocked()).isFalse();
    assertThat(scored.figure("sent-out-per-1000")).isCloseTo(cost / 2000, within(1e-9));
    assertThat(scored.figure("lead-time")).isEqualTo(42 + 12 + 2 + 2 + 1);
    assertThat(STICKS.told(GRAVURE_ROUTE, "finding.sent-out"))
        .containsExactly("Rotogravure, solvent-based", "gravure-house", 1, cost, 12.0);
  }

  @Test
  void theWebDecidesWhoPrintsIt() {
    String film =
        "bopet 12 um / ink-nc 1.5 g/m2 @gravure-solvent"
            + " / adhesive-pu-solventless 2 g/m2 @solventless / lldpe 40 um";
    assertThat(STICKS.told(film, "finding.sent-out")).contains("film-printer");
    assertThat(STICKS.score(PRINTED + "bopp 20 um").figure("lead-time"))
        .as("web, film press, slitter")
        .isEqualTo(14 + 2 + 1);
  }

  @Test
  void whatNobodyRunsIsNotMakeable() {
    String solvent = "ink-nc 1.5 g/m2 @flexo-solvent / kraft-paper 50 g/m2";
    assertThat(STICKS.blocks(solvent)).containsExactly("finding.no-work-centre.nobody");
    assertThat(STICKS.score(solvent).outcomes().get("lead-time"))
        .isEqualTo(new Outcome.DataMissing("@flexo-solvent", "machine or service"));
  }

  @Test
  void theNearestMachineIsNamedWithWhatItLacks() {
    assertThat(
            STICKS.told(
                PRINTED + "kraft-paper 50 g/m2 / ldpe 45 um @extrusion-coating",
                "finding.no-work-centre.layer"))
        .containsExactly(
            "Extrusion coating", "extruder", "ldpe 45 um @extrusion-coating", "10 to 40 um");
    String lacquered =
        "ink-wb 1.5 g/m2 @flexo-water / aluminium-foil 12 um"
            + " / heat-seal-lacquer 5 g/m2 @lacquering";
    assertThat(STICKS.blocks(lacquered)).isEmpty();
    assertThat(STICKS.blocks(lacquered.replace("aluminium-foil 12 um", "kraft-paper 50 g/m2")))
        .containsExactly("finding.no-work-centre.web");
  }

  @Test
  void aWiderWebThanTheMachineTakesIsToldInLanes() {
    assertThat(STICKS.on(1400, 6).told(FOIL_ROUTE, "finding.no-work-centre.too-wide"))
        .as("(1300 - 20) / 48 and (1400 - 20) / 48, whole lanes")
        .startsWith("Flexography, water-based")
        .endsWith(1400.0, 1300.0, 26, 28);
  }

  @Test
  void colourAndVarnishInOneRunTakeAStationMoreThanTheColours() {
    String varnished = "overprint-varnish-wb 1 g/m2 @flexo-water / " + FOIL_ROUTE;
    assertThat(STICKS.on(1000, 8).blocks(FOIL_ROUTE)).isEmpty();
    assertThat(STICKS.on(1000, 8).blocks(varnished))
        .containsExactly("finding.no-work-centre.stations");
    assertThat(STICKS.on(1000, 7).blocks(varnished)).isEmpty();
  }

  @Test
  void aMachineWithoutLeaveForSolventsRunsNoSolventInk() {
    WorkCentre press =
        new WorkCentre(
            "old-press",
            "Old press",
            Set.of("gravure-solvent"),
            new Span(400, 1300),
            List.of(),
            List.of(),
            8,
            false,
            1,
            Optional.empty(),
            "");
    Order withPress = new Order(STICKS.brief(), with(STICKS.plant(), press));
    assertThat(withPress.told(GRAVURE_ROUTE, "finding.sent-out")).contains("gravure-house");
    assertThat(withPress.told(GRAVURE_ROUTE, "finding.own-machine.solvent")).contains("Old press");
  }

  @Test
  void amongServicesTheCheapestForTheOrderIsTaken() {
    WorkCentre dearToSetUp = printer("dear-to-set-up", new Charge(2000, 10));
    Order order = new Order(STICKS.brief(), with(STICKS.plant(), dearToSetUp));
    assertThat(order.told(GRAVURE_ROUTE, "finding.sent-out")).contains("gravure-house");
    assertThat(order.of(20_000_000).told(GRAVURE_ROUTE, "finding.sent-out"))
        .contains("dear-to-set-up");
  }

  @Test
  void aJobStaysOnOneMachineForAllPassesOfAProcess() {
    String face = PRINTED + "bopp 20 um / adhesive-pu-solventless 2 g/m2 @solventless / ";
    String both = face + "kraft-paper 50 g/m2 / ink-wb 1.5 g/m2 @flexo-water";
    assertThat(STICKS.blocks(face + "lldpe 40 um")).isEmpty();
    assertThat(STICKS.blocks(PRINTED + "kraft-paper 50 g/m2")).isEmpty();
    assertThat(STICKS.blocks(both)).containsExactly("finding.no-work-centre.web");
  }

  @Test
  void anotherMachineNeverMakesAJobImpossible() {
    Plant larger = with(STICKS.plant(), printer("another", new Charge(0, 0)));
    for (Structure structure : SampleStructures.all()) {
      if (structure.layers().stream()
          .noneMatch(l -> l.material().equals(SampleStructures.BARE_FILM))) {
        String notation = structure.toString();
        int before = STICKS.blocks(notation).size();
        assertThat(new Order(STICKS.brief(), larger).blocks(notation).size())
            .as("%s", structure)
            .isLessThanOrEqualTo(before);
      }
    }
  }

  @Test
  void theExplanationIsTheRouteTable() {
    Explanation.Table route = (Explanation.Table) STICKS.explain(GRAVURE_ROUTE).sections().get(0);
    assertThat(route.rows())
        .extracting(r -> r.get(1))
        .containsExactly("gravure-house", "extruder", "extruder", "slitter");
    assertThat(route.rows()).extracting(r -> r.get(2)).containsExactly(12.0, 2.0, 2.0, 1.0);
  }

  private static WorkCentre printer(String id, Charge charge) {
    return new WorkCentre(
        id,
        id,
        Set.of("gravure-solvent"),
        new Span(400, 1300),
        List.of(),
        List.of(),
        8,
        true,
        12,
        Optional.of(charge),
        "");
  }

  private static Plant with(Plant plant, WorkCentre centre) {
    List<WorkCentre> centres = new ArrayList<>(plant.centres());
    centres.add(centre);
    return new Plant(plant.name(), centres, plant.webs(), plant.note());
  }
}
