package plyworth.workbench;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Who may know whom, read from the compiled classes of all modules. */
class HouseRulesTest {

  private static final List<String> SHARED =
      Stream.of(
              "quantity",
              "data",
              "material",
              "structure",
              "brief",
              "route",
              "plant",
              "scoring",
              "study",
              "store")
          .map("plyworth.shared."::concat)
          .toList();

  private static final List<String> WORKBENCH =
      Stream.of(
              "host",
              "engine",
              "ranking",
              "analysis",
              "robustness",
              "chart",
              "report",
              "command",
              "desktop",
              "app")
          .map("plyworth.workbench."::concat)
          .toList();

  private static final List<String> DESKTOP =
      Stream.of(
              "word",
              "part",
              "session",
              "candidate",
              "ranking",
              "decision",
              "brief",
              "position",
              "material",
              "evidence",
              "plugin")
          .map("plyworth.workbench.desktop."::concat)
          .toList();

  private static final List<String> COMMAND =
      Stream.of("print", "part", "candidate", "ranking", "robustness", "evidence", "stock")
          .map("plyworth.workbench.command."::concat)
          .toList();

  private static final List<String> BARRIER =
      Stream.of(
              "laminate",
              "diffusion",
              "leak",
              "calibration",
              "permeation",
              "climate",
              "course",
              "pack",
              "layerwise",
              "explain")
          .map("plyworth.plugins.barrier."::concat)
          .toList();

  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(at -> !at.contains("test-classes") && !at.contains("-tests.jar"))
          .importPackages("plyworth");

  private static void check(ArchRule rule) {
    rule.allowEmptyShould(true).check(CLASSES);
  }

  private static String[] inside(List<String> rooms) {
    return rooms.stream().map(room -> room + "..").toArray(String[]::new);
  }

  /** Each room with those that stand below it in its list. */
  static Stream<Arguments> rooms() {
    return Stream.of(SHARED, WORKBENCH, DESKTOP, COMMAND, BARRIER)
        .flatMap(
            list ->
                IntStream.range(0, list.size())
                    .mapToObj(i -> Arguments.of(list.get(i), list.subList(i + 1, list.size()))));
  }

  @ParameterizedTest
  @CsvSource({
    "plyworth.shared, 80",
    "plyworth.workbench, 30",
    "plyworth.plugins.barrier, 10",
    "plyworth.plugins.cost, 10",
    "plyworth.plugins.recyclability, 10",
    "plyworth.plugins.printmethod, 10",
    "plyworth.plugins.machinability, 10",
    "plyworth.plugins.supply, 10"
  })
  void everyModuleIsSeen(String module, int fewest) {
    assertThat(CLASSES.stream().filter(c -> c.getPackageName().startsWith(module)))
        .hasSizeGreaterThan(fewest);
  }

  @Test
  void everyClassLivesInARoom() {
    check(
        classes()
            .should()
            .resideInAnyPackage(
                Stream.of(SHARED, WORKBENCH, List.of("plyworth.plugins.*"))
                    .flatMap(rooms -> Stream.of(inside(rooms)))
                    .toArray(String[]::new)));
  }

  @ParameterizedTest
  @MethodSource("rooms")
  void aRoomKnowsOnlyThoseAboveIt(String room, List<String> below) {
    check(
        noClasses()
            .that()
            .resideInAPackage(room + "..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(inside(below)));
  }

  @Test
  void theCommandLineAndTheDesktopDoNotKnowEachOther() {
    check(
        noClasses()
            .that()
            .resideInAPackage("plyworth.workbench.command..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("plyworth.workbench.desktop.."));
    check(
        noClasses()
            .that()
            .resideInAPackage("plyworth.workbench.desktop..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("plyworth.workbench.command.."));
  }

  @Test
  void partsOfTheWindowDoNotKnowTheWindow() {
    check(
        noClasses()
            .that()
            .resideInAnyPackage(inside(DESKTOP))
            .should()
            .dependOnClassesThat()
            .resideInAPackage("plyworth.workbench.desktop"));
  }

  @Test
  void commandsDoNotKnowTheProgram() {
    check(
        noClasses()
            .that()
            .resideInAnyPackage(inside(COMMAND))
            .should()
            .dependOnClassesThat()
            .resideInAPackage("plyworth.workbench.command"));
  }

  @Test
  void roomsOfTheBarrierDoNotKnowThePlugin() {
    check(
        noClasses()
            .that()
            .resideInAnyPackage(inside(BARRIER))
            .should()
            .dependOnClassesThat()
            .resideInAPackage("plyworth.plugins.barrier"));
  }

  @Test
  void sharedKnowsNeitherWorkbenchNorPlugins() {
    check(
        noClasses()
            .that()
            .resideInAPackage("plyworth.shared..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("plyworth.workbench..", "plyworth.plugins.."));
  }

  @Test
  void theWorkbenchKnowsNoPlugin() {
    check(
        noClasses()
            .that()
            .resideInAPackage("plyworth.workbench..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("plyworth.plugins.."));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "barrier",
        "cost",
        "recyclability",
        "printmethod",
        "machinability",
        "supply",
        "footprint"
      })
  void aPluginKnowsSharedAloneAndTheLibrariesItBrings(String plugin) {
    check(
        classes()
            .that()
            .resideInAPackage("plyworth.plugins." + plugin + "..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                "plyworth.plugins." + plugin + "..",
                "plyworth.shared..",
                "java..",
                "org.hipparchus.."));
  }

  @Test
  void noPluginDraws() {
    check(
        noClasses()
            .that()
            .resideInAPackage("plyworth.plugins..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.awt..", "javax.swing.."));
  }

  @Test
  void searchAndRankingKnowNeitherScreensNorFiles() {
    check(
        noClasses()
            .that()
            .resideInAnyPackage("plyworth.workbench.engine..", "plyworth.workbench.ranking..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.awt..", "javax.swing..", "java.io..", "java.nio.file.."));
  }

  /** A library, or a part of the JDK, with the rooms that may use it. */
  static Stream<Arguments> libraries() {
    return Stream.of(
        Arguments.of("com.fasterxml", List.of("plyworth.shared.data", "plyworth.shared.store")),
        Arguments.of("org.jgrapht", List.of("plyworth.workbench.engine.graph")),
        Arguments.of(
            "org.hipparchus", List.of("plyworth.plugins.barrier", "plyworth.workbench.robustness")),
        Arguments.of("javax.swing", List.of("plyworth.workbench.desktop")),
        Arguments.of("com.formdev", List.of("plyworth.workbench.desktop")),
        Arguments.of(
            "java.awt",
            List.of(
                "plyworth.workbench.chart",
                "plyworth.workbench.report",
                "plyworth.workbench.desktop")));
  }

  @ParameterizedTest
  @MethodSource("libraries")
  void aLibraryStaysInItsRooms(String library, List<String> rooms) {
    check(
        noClasses()
            .that()
            .resideOutsideOfPackages(inside(rooms))
            .should()
            .dependOnClassesThat()
            .resideInAPackage(library + ".."));
  }

  @Test
  void packagesFormNoCycle() {
    check(slices().matching("plyworth.(**)").should().beFreeOfCycles());
  }
}
