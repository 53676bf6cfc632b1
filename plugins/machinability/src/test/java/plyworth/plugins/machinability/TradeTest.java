package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Brief;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

/** What the trade knows of sealants, bonds and machines; common practice unless a source stands. */
class TradeTest {

  private static final String PAPER_FOIL =
      "kraft-paper 50 g/m2 / ldpe 12 um @extrusion-lamination / aluminium-foil 7 um / ";

  private static Assessment score(Brief brief, String structure) {
    return score(brief, structure, Map.of());
  }

  private static Assessment score(Brief brief, String structure, Map<String, Double> set) {
    MachinabilityPlugin plugin = new MachinabilityPlugin();
    Map<String, Double> parameters =
        plugin.parameters().stream()
            .collect(Collectors.toMap(Parameter::id, p -> set.getOrDefault(p.id(), p.standard())));
    Scorer scorer =
        plugin.bind(
            new ScoringContext(
                brief,
                MaterialLibrary.standard(),
                ProcessLibrary.standard(),
                parameters,
                Set.of(),
                Draw.TYPICAL));
    return scorer.score(LayerNotation.readStructure(structure), Map.of());
  }

  private static List<String> rules(Assessment assessment, Finding.Level level) {
    return assessment.findings().stream()
        .filter(f -> f.level() == level)
        .map(Finding::rule)
        .toList();
  }

  private static double attack(Brief brief, String structure) {
    return score(brief, structure).figure(Criteria.ATTACK);
  }

  @Test
  void alcoholLiftsPlainPolyethyleneFromFoil() {
    Brief wipe = SampleBriefs.alcoholWipe();
    for (String layer : List.of("ldpe", "lldpe", "eva-18", "wax")) {
      Assessment coated = score(wipe, PAPER_FOIL + layer + " 30 um @extrusion-coating");
      assertThat(rules(coated, Finding.Level.BLOCKS)).contains(Criteria.ATTACK_ON_BOND);
      assertThat(coated.figure(Criteria.ATTACK)).isEqualTo(Attack.BLOCKED);
    }
  }

  @Test
  void acidCopolymersAndIonomersHoldTheFoilAgainstAlcohol() {
    Brief wipe = SampleBriefs.alcoholWipe();
    for (String layer : List.of("eaa", "ionomer")) {
      Assessment coated = score(wipe, PAPER_FOIL + layer + " 30 um @extrusion-coating");
      assertThat(coated.figure(Criteria.ATTACK)).isEqualTo(Attack.PASS);
      assertThat(coated.blocked()).isFalse();
      assertThat(rules(coated, Finding.Level.INFORMS)).contains("alcohol-acid-copolymer-on-foil");
    }
  }

  @Test
  void anAcidCopolymerTieUnderPolyethyleneIsEnough() {
    String tie = PAPER_FOIL + "eaa 8 um @extrusion-coating / ldpe 25 um @coextruded";
    assertThat(attack(SampleBriefs.alcoholWipe(), tie)).isEqualTo(Attack.PASS);
  }

  @Test
  void polyethyleneOverAnAdhesiveOnFoilIsToBeWatchedWithAlcohol() {
    String bonded = PAPER_FOIL + "adhesive-pu-solvent 3 g/m2 @dry-bond / ldpe 40 um";
    assertThat(attack(SampleBriefs.alcoholWipe(), bonded)).isEqualTo(Attack.WATCH);
  }

  @Test
  void acrylicAdhesiveAtTheFoilFailsWithAlcohol() {
    String bonded =
        PAPER_FOIL + "adhesive-acrylic-wb 3 g/m2 @water-based-lamination / pan-copolymer 30 um";
    assertThat(attack(SampleBriefs.alcoholWipe(), bonded)).isEqualTo(Attack.BLOCKED);
  }

  @Test
  void polyethyleneOutsideTheFoilIsOutOfReach() {
    String structure = PAPER_FOIL + "eaa 30 um @extrusion-coating";
    assertThat(rules(score(SampleBriefs.alcoholWipe(), structure), Finding.Level.BLOCKS)).isEmpty();
  }

  @Test
  void drySugarDoesNotAttackPolyethyleneOnFoil() {
    String structure = PAPER_FOIL + "ldpe 30 um @extrusion-coating";
    assertThat(attack(SampleBriefs.sugarStick(), structure)).isEqualTo(Attack.PASS);
  }

  /** Olafsson and Hildingsson, J. Agric. Food Chem. 43 (1995) 306, abstract. */
  @Test
  void fattyAcidsWeakenPolyethyleneOnFoil() {
    String structure = PAPER_FOIL + "ldpe 30 um @extrusion-coating";
    assertThat(attack(SampleBriefs.seasoningStick(), structure)).isEqualTo(Attack.WATCH);
  }

  @Test
  void barePaperAndOrientedFilmDoNotSeal() {
    for (String bare : List.of("kraft-paper 60 g/m2", "bopet 12 um", "aluminium-foil 20 um")) {
      assertThat(rules(score(SampleBriefs.sugarStick(), bare), Finding.Level.BLOCKS))
          .contains(Criteria.CANNOT_SEAL);
    }
  }

  @Test
  void aSevenMicrometreCoatingIsNoSealantAndTwelveIsThinOnAVerticalMachine() {
    Brief stick = SampleBriefs.sugarStick();
    Assessment seven = score(stick, "kraft-paper 60 g/m2 / ldpe 7 um @extrusion-coating");
    Assessment twelve = score(stick, "kraft-paper 60 g/m2 / ldpe 12 um @extrusion-coating");
    assertThat(rules(seven, Finding.Level.BLOCKS)).contains(Criteria.SEALANT_TOO_THIN);
    assertThat(rules(twelve, Finding.Level.BLOCKS)).isEmpty();
    assertThat(rules(twelve, Finding.Level.WARNS)).contains("sealant-thin");
  }

  @Test
  void sealableLayersThatLieTogetherCountAsOneSealant() {
    String skin =
        "kraft-paper 60 g/m2 / ldpe 20 um @extrusion-coating / plastomer 6 um @coextruded";
    List<String> remarks = rules(score(SampleBriefs.sugarStick(), skin), Finding.Level.WARNS);
    assertThat(remarks).doesNotContain("sealant-thin");
  }

  @Test
  void websThatBringTheirOwnSealCoatAreWatchedNotBlocked() {
    Brief stick = SampleBriefs.sugarStick();
    for (String web : List.of("bopp-heat-seal 30 um", "barrier-paper-wv 75 g/m2")) {
      Assessment own = score(stick, web);
      assertThat(rules(own, Finding.Level.BLOCKS)).doesNotContain(Criteria.SEALANT_TOO_THIN);
      assertThat(rules(own, Finding.Level.WARNS)).contains("sealant-thin");
    }
  }

  /** About a fifth for a paper and foil laminate with 100 to 120 kJ/kg, from memory. */
  @Test
  void fusionHeatLengthensTheDwell() {
    String structure = PAPER_FOIL + "eaa 30 um @extrusion-coating";
    Brief wipe = SampleBriefs.alcoholWipe();
    double without = score(wipe, structure).figure(Criteria.SEAL_DWELL);
    double with = score(wipe, structure, Map.of("fusion-heat", 110.0)).figure(Criteria.SEAL_DWELL);
    assertThat(with / without).isBetween(1.1, 1.4);
  }

  @Test
  void orientedPolyethyleneOutsideLeavesAPolyethyleneSealantNoWindow() {
    Brief pillow = SampleBriefs.freezeDriedSnack();
    Assessment mono =
        score(pillow, "mdo-pe 25 um / adhesive-pu-solvent 2 g/m2 @dry-bond / lldpe 50 um");
    Assessment polyester =
        score(pillow, "bopet 12 um / adhesive-pu-solvent 2 g/m2 @dry-bond / lldpe 50 um");
    assertThat(mono.figure(Criteria.SEAL_WINDOW)).isNegative();
    assertThat(rules(mono, Finding.Level.BLOCKS)).contains(Criteria.SEAL_WINDOW);
    assertThat(polyester.figure(Criteria.SEAL_WINDOW)).isGreaterThan(15);
  }

  @Test
  void printLowersTheHottestJawsAndHeatResistantLacquerLiftsThem() {
    String paper = "kraft-paper 60 g/m2 / ldpe 25 um @extrusion-coating";
    String print = "ink-wb 2 g/m2 @flexo-water / " + paper;
    String lacquered = "heat-resistant-lacquer 2 g/m2 @lacquering / " + print;
    Brief stick = SampleBriefs.sugarStick();
    double bare = score(stick, paper).figure(Criteria.SEAL_WINDOW);
    double printed = score(stick, print).figure(Criteria.SEAL_WINDOW);
    double protectedPrint = score(stick, lacquered).figure(Criteria.SEAL_WINDOW);
    assertThat(printed).isLessThan(bare);
    assertThat(protectedPrint).isGreaterThan(printed);
  }

  @Test
  void packsPerMinuteAreHandedOnAndTheirLimitIsNamed() {
    Assessment sugar =
        score(SampleBriefs.sugarStick(), PAPER_FOIL + "ldpe 30 um @extrusion-coating");
    assertThat(sugar.provided().get(Figure.PACKS_PER_MINUTE))
        .isEqualTo(sugar.figure(Criteria.PACKS_PER_MINUTE));
    assertThat(sugar.figure(Criteria.PACKS_PER_MINUTE)).isCloseTo(60, within(1e-9));
    assertThat(rules(sugar, Finding.Level.INFORMS)).contains("rate-limit");
  }

  @Test
  void hotJawsWithAlcoholAreAlwaysRemarkedOn() {
    Assessment wipe =
        score(SampleBriefs.alcoholWipe(), PAPER_FOIL + "eaa 30 um @extrusion-coating");
    assertThat(rules(wipe, Finding.Level.WARNS)).contains("flammable-vapour");
  }
}
