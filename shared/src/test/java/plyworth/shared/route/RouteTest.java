package plyworth.shared.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/** Which passes make a structure: common practice of printing and laminating plants. */
class RouteTest {

  private static final ProcessLibrary PLANT =
      new ProcessLibrary(
          Stream.of(
                  process("press", ProcessRole.PRINT),
                  process("melt", ProcessRole.BOND),
                  process("glue", ProcessRole.BOND),
                  process("coat", ProcessRole.COATING),
                  process("lacquer", ProcessRole.COATING),
                  process("coextruded", ProcessRole.WEB_PART),
                  process("slitting", ProcessRole.FINISHING))
              .collect(Collectors.toMap(Process::id, p -> p)));

  private static Process process(String id, ProcessRole role) {
    return new Process(id, id, role, Map.of(), "");
  }

  private static String route(String structure) {
    return Route.of(LayerNotation.readStructure(structure), PLANT).passes().stream()
        .map(p -> p.process().id() + p.layers())
        .collect(Collectors.joining(" "));
  }

  @Test
  void surfacePrintedPaperIsPrintedLaminatedCoatedAndSlit() {
    assertThat(
            route(
                "ink 1.4 g/m2 @press / paper 50 g/m2 / ldpe 15 um @melt / foil 7 um"
                    + " / ldpe 25 um @coat"))
        .isEqualTo("press[0, 1] melt[2, 3] coat[4] slitting[]");
  }

  @Test
  void reversePrintedFilmEntersThePressBeforeItIsLaminated() {
    assertThat(route("pet 12 um / ink 2 g/m2 @press / adhesive 2 g/m2 @glue / ldpe 50 um"))
        .isEqualTo("press[0, 1] glue[2, 3] slitting[]");
  }

  @Test
  void aWebAloneIsOnlySlit() {
    assertThat(route("paper 60 g/m2")).isEqualTo("slitting[0]");
  }

  @Test
  void primerInkAndVarnishFromOnePressAreOnePass() {
    assertThat(
            route(
                "varnish 1 g/m2 @press / ink 2 g/m2 @press / primer 0.8 g/m2 @press / foil 20 um"
                    + " / lacquer 4 g/m2 @lacquer"))
        .isEqualTo("press[0, 1, 2, 3] lacquer[4] slitting[]");
  }

  @Test
  void lacquerOverPrintFromAnotherMachineIsAPassOfItsOwn() {
    assertThat(route("lacquer 3 g/m2 @lacquer / ink 2 g/m2 @press / foil 20 um"))
        .isEqualTo("lacquer[0] press[1, 2] slitting[]");
  }

  @Test
  void printOverABarrierCoatingLeavesTheCoatingItsPass() {
    assertThat(route("ink 2 g/m2 @press / barrier 8 g/m2 @coat / paper 60 g/m2"))
        .isEqualTo("press[0] coat[1, 2] slitting[]");
  }

  @Test
  void primerOnTheSecondWebOfALaminationCostsNeitherPassTheOther() {
    assertThat(route("paper 50 g/m2 / ldpe 12 um @melt / primer 1 g/m2 @coat / pet 12 um"))
        .isEqualTo("melt[0, 1] coat[2, 3] slitting[]");
  }

  @Test
  void primerOverReversePrintIsAPassOfItsOwn() {
    assertThat(
            route(
                "pet 12 um / ink 2 g/m2 @press / primer 1 g/m2 @coat / ldpe 12 um @melt"
                    + " / foil 7 um"))
        .isEqualTo("press[0, 1] coat[2] melt[3, 4] slitting[]");
  }

  @Test
  void coextrudedPartsCallForNoPass() {
    assertThat(
            route(
                "paper 50 g/m2 / adhesive 2 g/m2 @glue / pe 20 um / evoh 5 um @coextruded"
                    + " / pe 20 um @coextruded"))
        .isEqualTo("glue[0, 1, 2] slitting[3, 4]");
  }

  @Test
  void anUnknownProcessIsNamed() {
    assertThatThrownBy(() -> route("paper 50 g/m2 / ldpe 12 um @molt"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("@molt")
        .hasMessageContaining("melt");
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void everyLayerEntersOnceAndEveryProcessRuns(long seed) {
    Structure structure = random(new Random(seed));
    Route route = Route.of(structure, PLANT);
    List<Integer> entered = route.passes().stream().flatMap(p -> p.layers().stream()).toList();
    assertThat(entered).as(structure.toString()).isSorted().doesNotHaveDuplicates();
    assertThat(entered).hasSize(structure.layers().size());
    assertThat(route.passes().stream().map(p -> p.process().id()).collect(Collectors.toSet()))
        .as(structure.toString())
        .containsAll(processesOf(structure));
  }

  private static List<String> processesOf(Structure structure) {
    return structure.layers().stream()
        .map(Layer::process)
        .filter(id -> !id.isEmpty() && !id.equals("coextruded"))
        .toList();
  }

  private static Structure random(Random random) {
    List<String> processes =
        List.of("", "", "press", "melt", "glue", "coat", "lacquer", "coextruded");
    return new Structure(
        random
            .ints(12, 0, processes.size())
            .mapToObj(p -> Layer.grams("stuff", 10, processes.get(p)))
            .toList());
  }
}
