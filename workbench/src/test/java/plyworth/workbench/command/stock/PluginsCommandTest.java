package plyworth.workbench.command.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.PluginSettings;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.command.CommandLineRun;
import plyworth.workbench.command.OwnPlugins;

/** Plugins come and go; what is there works. */
class PluginsCommandTest {

  /** Those that the study weighs criteria of. */
  private static final String[] USED = {
    "barrier", "cost", "machinability", "print-method", "recyclability"
  };

  /** The one that asks for a plant, which the study has not. */
  private static final String UNUSED = "supply";

  @TempDir Path folder;
  @TempDir Path plugins;
  private Path study;

  @BeforeEach
  void studyAndPluginsAreThere() throws IOException {
    study = BrothStudy.in(folder);
    OwnPlugins.copyTo(plugins);
  }

  @Test
  void theBuiltInPluginsAreListedWithTheirCriteriaAndSettings() {
    CommandLineRun run = CommandLineRun.of("plugins");
    assertThat(run.code()).isZero();
    for (String plugin : Stream.concat(Stream.of(USED), Stream.of(UNUSED)).toList()) {
      assertThat(run.out()).contains("\n  " + plugin + ": ");
    }
    assertThat(run.out())
        .contains("barrier/otr", "cm³/(m²·day·bar)", "pinhole-diameter", "50 µm (1 to 500)")
        .doesNotContain("faulty");
  }

  @Test
  void aFaultyPluginIsListedWithItsReason() throws IOException {
    Files.writeString(plugins.resolve("broken.jar"), "not a jar");
    CommandLineRun run = CommandLineRun.of("plugins", "--plugins", plugins);
    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("faulty: broken.jar", "not a readable jar");
    CommandLineRun ranked = CommandLineRun.of("rank", study, "--plugins", plugins);
    assertThat(ranked.code()).isZero();
    assertThat(ranked.err()).contains("left out: broken.jar");
  }

  @ParameterizedTest
  @ValueSource(strings = {"barrier", "cost", "machinability", "print-method", "recyclability"})
  void aStudyThatUsesAMissingPluginSaysSoAndRunsWithoutItWhenTold(String missing)
      throws IOException {
    OwnPlugins.remove(plugins, missing);
    CommandLineRun refused = CommandLineRun.of("rank", study, "--plugins", plugins);
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err())
        .contains(study.toString(), "line 16", "\"" + missing + "\", which is not loaded")
        .contains("--leave-out " + missing);
    runsWithout(missing);
  }

  private void runsWithout(String missing) {
    Object[] options = {"--plugins", plugins, "--leave-out", missing, "--format", "json"};
    CommandLineRun ranked = run("rank", options);
    assertThat(ranked.number("weighting", "sharedOut")).isPositive();
    assertThat(ranked.keys("baseline", "criteria"))
        .isNotEmpty()
        .noneMatch(id -> id.startsWith(missing + "/"));
    CommandLineRun explained = run("explain", "1", options);
    assertThat(explained.keys("explanation")).hasSize(5).doesNotContain(missing);
    CommandLineRun scored = run("score", "--structure", "lldpe 40 um", options);
    assertThat(scored.keys("criteria")).noneMatch(id -> id.startsWith(missing + "/"));
    assertThat(CommandLineRun.of("check", study, "--leave-out", missing).code()).isZero();
  }

  private CommandLineRun run(String command, Object... arguments) {
    Stream<Object> flat =
        Stream.of(arguments)
            .flatMap(a -> a instanceof Object[] many ? Stream.of(many) : Stream.of(a));
    CommandLineRun run =
        CommandLineRun.of(Stream.concat(Stream.of(command, study), flat).toArray());
    assertThat(run.code()).isZero();
    return run;
  }

  /** The broth study with a word on whether cost is used. */
  private Path withCostInUse(String value) throws IOException {
    StudyFile.Opened opened = StudyFile.open(study);
    Path file = folder.resolve("in-use-" + value + ".study.json");
    StudyFile.save(
        file,
        PluginSettings.set(opened.study(), "cost", "in-use", Double.parseDouble(value)),
        StudyFile.NEW);
    return file;
  }

  @Test
  void aPluginThatTheStudyLeavesOutIsNotCountedAndThatIsSaid() throws IOException {
    Path without = withCostInUse("0");
    CommandLineRun run = CommandLineRun.of("rank", without);
    assertThat(run.code()).isZero();
    assertThat(run.out())
        .contains("cost/packed-per-1000 is shared out: the study leaves the plugin cost out");
    OwnPlugins.remove(plugins, "cost");
    assertThat(CommandLineRun.of("rank", without, "--plugins", plugins).code()).isZero();
    assertThat(CommandLineRun.of("rank", withCostInUse("1")).out()).doesNotContain("leaves");
  }

  @Test
  void aPluginIsUsedOrNot() throws IOException {
    CommandLineRun refused = CommandLineRun.of("rank", withCostInUse("0.5"));
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err())
        .contains("settings.cost.in-use", "1 uses the plugin, 0 leaves it out");
  }

  @Test
  void aPlantThatNobodyJudgesByIsNotPassedOverInSilence() throws IOException {
    Path sugar = Path.of("../studies/sugar-stick.study.json");
    String text = Files.readString(sugar);
    int limits = text.indexOf("\"limits\":");
    String unlimited =
        text.substring(0, limits)
            + "\"limits\": [ ]"
            + text.substring(text.indexOf(",\n  \"settings\""));
    Path study = Files.writeString(folder.resolve("sugar.study.json"), unlimited);
    assertThat(CommandLineRun.of("check", study, "--plugins", plugins).code()).isZero();
    OwnPlugins.remove(plugins, UNUSED);
    CommandLineRun refused = CommandLineRun.of("check", study, "--plugins", plugins);
    assertThat(refused.code()).isEqualTo(2);
    assertThat(refused.err()).contains("at plant", "no plugin that is loaded judges by it");
  }

  @Test
  void withoutMachinabilityCostUsesItsOwnRateAndSaysSo() throws IOException {
    CommandLineRun with = run("score", "--structure", "lldpe 40 um");
    assertThat(with.out()).doesNotContain("40 packs");
    CommandLineRun without =
        run("score", "--structure", "lldpe 40 um", "--leave-out", "machinability");
    assertThat(without.out()).contains("40 packs");
    CommandLineRun explained = run("explain", "baseline", "--leave-out", "machinability");
    assertThat(explained.out()).contains("filling line at 40 packs per minute");
  }

  @Test
  void withoutAnyPluginThereIsNothingToRankBy() throws IOException {
    OwnPlugins.remove(plugins, UNUSED);
    for (String plugin : USED) {
      OwnPlugins.remove(plugins, plugin);
    }
    CommandLineRun run = CommandLineRun.of("plugins", "--plugins", plugins);
    assertThat(run.out()).contains("none is loaded");
    Object[] all = Stream.of(USED).flatMap(plugin -> Stream.of("--leave-out", plugin)).toArray();
    assertThat(run("rank", "--plugins", plugins, all).out())
        .contains("(25.0 %) barrier/margin is shared out: no plugin that is loaded measures it")
        .contains("No criterion counts: every value is 0 and the order means nothing.");
  }
}
