package plyworth.workbench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.workbench.BrothStudy;

/** What is typed wrongly is answered by what would be right. */
class WrongArgumentsTest {

  @TempDir Path folder;

  private void isRefused(String arguments, String message) throws IOException {
    Path study = BrothStudy.in(folder);
    List<Object> all = new ArrayList<>(Arrays.asList(arguments.split(" ; ")));
    all.replaceAll(a -> a.equals("STUDY") ? study : a);
    CommandLineRun run = CommandLineRun.of(all.toArray());
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("plyworth: ").contains(message);
    assertThat(run.err()).doesNotContain("Exception").doesNotContain("java.");
    assertThat(Files.readString(study)).isEqualTo(BrothStudy.text());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "rank ; STUDY ; --top ; 0|--top is 0; it must be 1 to 100000",
        "rank ; STUDY ; --top ; ten|write a whole number, not \"ten\"",
        "rank ; STUDY ; --weighting ; balence|Did you mean \"balanced\"?",
        "rank ; STUDY ; --format ; xml|write table, json or csv, not \"xml\"",
        "rank ; STUDY ; --chart ; x.gif|x.gif: the name must end in .png or .svg",
        "rank ; STUDY ; --chart ; nowhere/x.png|there is no folder",
        "rank ; STUDY ; --chart ; target|is a folder",
        "rank ; STUDY ; --leave-out ; bariere|Did you mean \"barrier\"?",
        "rank ; STUDY ; --plugins ; nowhere|there is no folder nowhere",
        "rank ; STUDY ; --tpo ; 3|there is no option \"--tpo\". Did you mean \"--top\"?",
        "rank ; STUDY ; extra|\"extra\" is one argument too many",
        "rnak ; STUDY|\"rnak\" is neither a command nor a study file. Did you mean \"rank\"?",
        "rnak|Did you mean \"rank\"?",
        "why ; STUDY ; --structure ; baseline ; --nearest ; 51|--nearest is 51; it must be 0 to 50",
        "check|\"STUDY\"",
      })
  void optionsAndCommands(String arguments, String message) throws IOException {
    isRefused(arguments, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "kraft-papre 50 g/m2|\"kraft-papre\" is not in the library. Did you mean \"kraft-paper\"?",
        "ldpe 12 um @extrusion-laminaton|Did you mean \"extrusion-lamination\"?",
        "kraft-paper 50|write: material amount unit",
        "kraft-paper 50 g/m2 /|a layer is missing beside \"/\"",
        "kraft-paper 50 g/m2/ldpe 25 um|put spaces around a \"/\"",
        "kraft-paper NaN g/m2|it must be greater than 0",
        "kraft-paper 50 g/m2 @flexo-water 140 %|at most 100 %",
        "aluminium-foil 7 um !shiny-out|Known here: bright-out"
      })
  void structures(String structure, String message) throws IOException {
    isRefused("score ; STUDY ; --structure ; " + structure, message);
    isRefused("explain ; STUDY ; " + structure, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "0|ranks are counted from 1",
        "-1|ranks are counted from 1",
        "999999|there is no such rank: 47 candidates are ranked",
        "99999999999999999999|there is no such rank: 47 candidates are ranked",
        "baselin|Did you mean \"baseline\"?"
      })
  void candidates(String candidate, String message) throws IOException {
    isRefused("explain ; STUDY ; " + candidate, message);
  }

  @Test
  void everyCommandAnswersHelp() {
    for (String command : List.of("rank", "score", "explain", "compare", "check", "plugins")) {
      CommandLineRun run = CommandLineRun.of(command, "--help");
      assertThat(run.code()).isZero();
      assertThat(run.out()).startsWith("Usage: plyworth " + command).contains("--plugins");
    }
    assertThat(CommandLineRun.of("--help").out()).contains("rank", "score", "explain", "check");
  }
}
