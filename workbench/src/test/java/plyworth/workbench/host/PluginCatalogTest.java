package plyworth.workbench.host;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;

class PluginCatalogTest {

  @TempDir Path folder;

  private List<String> loaded() {
    return PluginCatalog.load(folder).plugins().stream().map(LoadedPlugin::id).toList();
  }

  private String onlyFault() {
    List<PluginFault> faults = PluginCatalog.load(folder).faults();
    assertThat(faults).hasSize(1);
    return faults.get(0).reason();
  }

  @Test
  void aPluginWrittenElsewhereIsLoadedFromItsJar() {
    new PluginJar(folder).pack("sample.jar");
    assertThat(loaded()).containsExactly("sample");
  }

  @Test
  void aPluginMayLieInAFolderWithTheLibrariesItBrings() throws IOException {
    Path own = Files.createDirectory(folder.resolve("sample"));
    new PluginJar(own).pack("sample.jar");
    assertThat(loaded()).containsExactly("sample");
  }

  @Test
  void aMissingFolderHoldsNoPlugins() {
    PluginCatalog catalog = PluginCatalog.load(folder.resolve("nowhere"));
    assertThat(catalog.plugins()).isEmpty();
    assertThat(catalog.faults()).isEmpty();
  }

  @Test
  void anotherInterfaceLevelIsRefusedBeforeAnyCodeRuns() {
    String trap = "static { System.setProperty(\"plyworth.test.ran\", \"yes\"); }";
    new PluginJar(folder).level("99").body(trap).pack("sample.jar");
    assertThat(onlyFault()).contains("interface level 99");
    assertThat(System.getProperty("plyworth.test.ran")).isNull();
  }

  @Test
  void aBadJarNeverStopsTheOthers() throws IOException {
    Files.writeString(folder.resolve("broken.jar"), "not a jar");
    new PluginJar(folder)
        .id("bursts")
        .body("static { if (true) throw new Error(\"x\"); }")
        .pack("b.jar");
    new PluginJar(folder).pack("sample.jar");
    PluginCatalog catalog = PluginCatalog.load(folder);
    assertThat(catalog.plugins()).extracting(LoadedPlugin::id).containsExactly("sample");
    assertThat(catalog.faults())
        .extracting(PluginFault::name)
        .containsExactly("b.jar", "broken.jar");
  }

  @Test
  void aPluginSeesTheSharedModuleButNotTheWorkbench() {
    String peek =
        "static { try { Class.forName(\"plyworth.workbench.host.Digits\");"
            + " throw new Error(\"the workbench is visible\"); }"
            + " catch (ClassNotFoundException expected) { } }";
    new PluginJar(folder).body(peek).pack("sample.jar");
    assertThat(loaded()).containsExactly("sample");
  }

  @Test
  void aPluginDoesNotSeeTheLibrariesOfTheWorkbench() {
    String peek =
        "static { try { Class.forName(\"org.jgrapht.Graph\");"
            + " throw new Error(\"a library is visible\"); }"
            + " catch (ClassNotFoundException expected) { } }";
    new PluginJar(folder).body(peek).pack("sample.jar");
    assertThat(loaded()).containsExactly("sample");
  }

  @Test
  void theSecondPluginOfAnIdIsRefused() {
    new PluginJar(folder).pack("a.jar");
    new PluginJar(folder).pack("b.jar");
    assertThat(loaded()).containsExactly("sample");
    assertThat(onlyFault()).contains("sample is loaded already");
  }

  @Test
  void theManifestNamesThePlugin() {
    new PluginJar(folder).id("other").body("").pack("a.jar");
    assertThat(loaded()).containsExactly("other");
  }

  @Test
  void aServiceThatDoesNotExistIsSaid() {
    new PluginJar(folder).service("stranger.Nobody").pack("a.jar");
    assertThat(onlyFault()).contains("Nobody");
  }

  @Test
  void providersComeBeforeThoseThatNeedThem() {
    new PluginJar(folder).id("a").needs("PACKS_PER_MINUTE").pack("a.jar");
    new PluginJar(folder).id("b").provides("PACKS_PER_MINUTE").pack("b.jar");
    assertThat(loaded()).containsExactly("b", "a");
  }

  @Test
  void aSecondProviderOfAFigureIsRefusedByName() {
    new PluginJar(folder).id("a").provides("PACKS_PER_MINUTE").pack("a.jar");
    new PluginJar(folder).id("b").provides("PACKS_PER_MINUTE").pack("b.jar");
    assertThat(onlyFault()).contains("PACKS_PER_MINUTE").contains("a provides already");
  }

  @Test
  void aCircleOfNeedsIsRefusedByName() {
    new PluginJar(folder)
        .id("a")
        .needs("PACKS_PER_MINUTE")
        .provides("SKELETON_WASTE")
        .pack("a.jar");
    new PluginJar(folder)
        .id("b")
        .needs("SKELETON_WASTE")
        .provides("PACKS_PER_MINUTE")
        .pack("b.jar");
    assertThat(PluginCatalog.load(folder).faults())
        .extracting(PluginFault::reason)
        .allMatch(reason -> reason.contains("circle with: a, b"))
        .hasSize(2);
  }

  @Test
  void sentencesComeFromThePluginsOwnBundle() {
    new PluginJar(folder).pack("sample.jar");
    LoadedPlugin sample = PluginCatalog.load(folder).plugins().get(0);
    assertThat(Sentences.of(sample.plugin(), Text.of("title"), Locale.ENGLISH)).isEqualTo("Sample");
    assertThat(Sentences.of(sample.plugin(), Text.of("absent"), Locale.ENGLISH))
        .isEqualTo("absent");
  }

  @Test
  void wordsAreLookedUpAsKeysThenAsTermsAndElseStandAsTheyAre() {
    new PluginJar(folder).pack("sample.jar");
    ScoringPlugin sample = PluginCatalog.load(folder).plugins().get(0).plugin();
    assertThat(Sentences.word(sample, "word.never", Locale.ENGLISH)).isEqualTo("never");
    assertThat(Sentences.word(sample, "Filling line", Locale.ENGLISH)).isEqualTo("line that fills");
    assertThat(Sentences.word(sample, "filling line (word.never)", Locale.ENGLISH))
        .isEqualTo("line that fills (never)");
    assertThat(Sentences.word(sample, "ldpe 25 um", Locale.ENGLISH)).isEqualTo("ldpe 25 um");
    assertThat(Sentences.word(sample, "", Locale.ENGLISH)).isEmpty();
  }
}
