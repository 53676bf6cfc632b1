package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.NeighbourRules;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.Objection;

/** What the rules of the trade let through; common practice. */
class StandardRulesTest {

  private static CandidateGraph graph(List<Position> positions) {
    return CandidateGraph.of(
        positions,
        NeighbourRules.standard(),
        MaterialLibrary.standard(),
        ProcessLibrary.standard());
  }

  private static List<Objection> objections(Structure structure) {
    return Objections.of(
        structure,
        List.of(new Position("all", List.of(new Option(structure.layers())))),
        NeighbourRules.standard(),
        MaterialLibrary.standard(),
        ProcessLibrary.standard());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ink-wb 1.5 g/m2 @flexo-water / kraft-paper 50 g/m2 / ldpe 20 um @extrusion-coating",
        "overprint-varnish-wb 1 g/m2 @flexo-water / ink-wb 1.5 g/m2 @flexo-water / kraft-paper 50"
            + " g/m2 / ldpe 12 um @extrusion-lamination / aluminium-foil 7 um !bright-out / eaa 20"
            + " um @extrusion-coating",
        "ink-wb 1.5 g/m2 @flexo-water / kraft-paper 50 g/m2 / ldpe 12 um @extrusion-lamination /"
            + " aluminium-foil 7 um / eaa 5 um @extrusion-coating / ldpe 20 um @extrusion-coating",
        "ink-wb 1.5 g/m2 @flexo-water / kraft-paper 40 g/m2 / adhesive-acrylic-wb 3 g/m2"
            + " @water-based-lamination / aluminium-foil 7 um / eaa 20 um @extrusion-coating",
        "bopet 12 um / ink-nc 1.5 g/m2 @gravure-solvent / adhesive-pu-solvent 2.5 g/m2 @dry-bond /"
            + " aluminium-foil 9 um / adhesive-pu-solvent 2.5 g/m2 @dry-bond / lldpe 50 um",
        "bopp 20 um / ink-nc 1.5 g/m2 @flexo-solvent / adhesive-pu-solventless 1.8 g/m2"
            + " @solventless / bopp-met 18 um / adhesive-pu-solventless 1.8 g/m2 @solventless /"
            + " cpp 30 um",
        "overprint-varnish-wb 1 g/m2 @flexo-water / ink-wb 1.5 g/m2 @flexo-water /"
            + " bopp-heat-seal 30 um",
        "heat-resistant-lacquer 1 g/m2 @gravure-solvent / ink-nc 1.5 g/m2 @gravure-solvent /"
            + " wash-primer 0.8 g/m2 @gravure-solvent / aluminium-foil 20 um / ldpe 20 um"
            + " @extrusion-coating",
        "ink-wb 1.5 g/m2 @flexo-water / kraft-paper 50 g/m2 / ldpe 12 um @extrusion-coating /"
            + " plastomer 8 um @extrusion-coating"
      })
  void everydayStructuresAreAllowed(String structure) {
    assertThat(objections(LayerNotation.readStructure(structure))).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "one-foil; ink-wb 1 g/m2 @flexo-water / kraft-paper 50 g/m2 / ldpe 12 um"
            + " @extrusion-lamination / aluminium-foil 7 um / adhesive-pu-solvent 2 g/m2 @dry-bond"
            + " / aluminium-foil 7 um / eaa 20 um @extrusion-coating",
        "paper-outside-foil; ink-wb 1 g/m2 @flexo-water / kraft-paper 50 g/m2 /"
            + " adhesive-pu-solvent 2 g/m2 @dry-bond / aluminium-foil 7 um / eaa 20 um"
            + " @extrusion-coating",
        "webs-need-a-bond; ink-wb 1 g/m2 @flexo-water / kraft-paper 50 g/m2 / aluminium-foil 7 um"
            + " / eaa 20 um @extrusion-coating",
        "a-print; kraft-paper 50 g/m2 / ldpe 20 um @extrusion-coating",
        "film-print-under-jaws; ink-nc 1 g/m2 @flexo-solvent / bopet 12 um / adhesive-pu-solvent"
            + " 2 g/m2 @dry-bond / lldpe 50 um",
        "plastomer-on-a-carrier; ink-wb 1 g/m2 @flexo-water / kraft-paper 50 g/m2 /"
            + " plastomer 15 um @extrusion-coating",
        "innermost-seals; ink-wb 1 g/m2 @flexo-water / kraft-paper 50 g/m2",
        "water-needs-a-porous-web; bopet 12 um / ink-nc 1 g/m2 @gravure-solvent /"
            + " adhesive-acrylic-wb 3 g/m2 @water-based-lamination / lldpe 50 um"
      })
  void whatTheTradeDoesNotMakeIsObjectedToByName(String rule, String structure) {
    assertThat(objections(LayerNotation.readStructure(structure)))
        .extracting(Objection::rule)
        .contains(rule);
  }

  private static Position position(String title, String... options) {
    return new Position(
        title,
        List.of(options).stream().map(o -> o.isEmpty() ? Option.NOTHING : option(o)).toList());
  }

  private static Option option(String layers) {
    return new Option(LayerNotation.readStructure(layers).layers());
  }

  /** A printed paper laminate with foil, and what might take the foil's place. */
  private static List<Position> sachet() {
    return List.of(
        position("Varnish", "", "overprint-varnish-wb 1 g/m2 @flexo-water"),
        position("Print", "ink-wb 1.5 g/m2 @flexo-water", "ink-nc 1.5 g/m2 @gravure-solvent"),
        position("Paper", "kraft-paper 40 g/m2", "kraft-paper 60 g/m2", "glassine 40 g/m2"),
        position(
            "Bond",
            "",
            "ldpe 12 um @extrusion-lamination",
            "adhesive-acrylic-wb 3 g/m2 @water-based-lamination",
            "adhesive-pu-solvent 2.5 g/m2 @dry-bond"),
        position("Barrier", "", "aluminium-foil 7 um", "bopet-met 12 um", "bopp-met 18 um"),
        position(
            "Second bond",
            "",
            "eaa 4 um @extrusion-coating",
            "adhesive-pu-solventless 1.8 g/m2 @solventless"),
        position(
            "Sealant",
            "ldpe 20 um @extrusion-coating",
            "lldpe 30 um",
            "eaa 20 um" + " @extrusion-coating"));
  }

  @Test
  void aStudyOfASachetOffersPaperFoilAndItsAlternatives() {
    CompiledGraph graph = graph(sachet()).compile();
    String print = "ink-wb 1.5 g/m2 @flexo-water / kraft-paper 40 g/m2 / ";
    assertThat(
            graph.pathOf(
                LayerNotation.readStructure(
                    print
                        + "ldpe 12 um @extrusion-lamination / aluminium-foil 7 um / eaa 4 um"
                        + " @extrusion-coating / ldpe 20 um @extrusion-coating")))
        .isPresent();
    assertThat(
            graph.pathOf(
                LayerNotation.readStructure(
                    print
                        + "adhesive-acrylic-wb 3 g/m2 @water-based-lamination / bopp-met 18 um /"
                        + " adhesive-pu-solventless 1.8 g/m2 @solventless / lldpe 30 um")))
        .isPresent();
    assertThat(
            graph.pathOf(
                LayerNotation.readStructure(
                    print + "aluminium-foil 7 um / eaa 20 um @extrusion-coating")))
        .isEmpty();
  }

  @Test
  void nothingObjectsToAnyCandidateOfTheSachet() {
    CompiledGraph graph = graph(sachet()).compile();
    assertThat(graph.count()).isPositive();
    for (long path = 0; path < graph.count(); path++) {
      assertThat(objections(graph.structure(path))).as("%s", graph.structure(path)).isEmpty();
    }
  }
}
