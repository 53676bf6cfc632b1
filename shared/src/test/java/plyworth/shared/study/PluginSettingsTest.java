package plyworth.shared.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;

class PluginSettingsTest {

  private static final Study STUDY =
      StudyFile.open(Path.of("..", "studies", "sugar-stick.study.json")).study();

  @Test
  void pluginLeftOutKeepsItsOtherSettings() {
    Study set = PluginSettings.set(STUDY, "cost", "margin", 0.25);
    Study out = PluginSettings.use(set, "cost", false);
    assertThat(PluginSettings.leftOut(out)).containsExactly("cost");
    assertThat(out.settings().get("cost")).containsEntry("margin", 0.25);
    assertThat(PluginSettings.use(out, "cost", true)).isEqualTo(set);
  }

  @Test
  void studyThatSaysNothingUsesEveryPlugin() {
    assertThat(PluginSettings.leftOut(STUDY)).isEmpty();
  }

  @Test
  void settingTakenBackLeavesNothingBehind() {
    Study set = PluginSettings.set(STUDY, "cost", "margin", 0.25);
    assertThat(PluginSettings.reset(set, "cost", "margin")).isEqualTo(STUDY);
  }

  @Test
  void fileRemembersWhatIsLeftOut(@TempDir Path folder) {
    Path file = folder.resolve("kept.study.json");
    Study out = PluginSettings.use(STUDY, "supply", false);
    StudyFile.save(file, out, StudyFile.NEW);
    assertThat(StudyFile.open(file).study()).isEqualTo(out);
  }
}
