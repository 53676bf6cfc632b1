package plyworth.workbench.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.workbench.BrothStudy;

/** A wrong study gets one message that names file, place, problem and remedy; it stays as it is. */
class WrongStudyTest {

  @TempDir Path folder;

  private void isRefused(Path file, String... parts) throws IOException {
    byte[] before = Files.readAllBytes(file);
    for (String command : new String[] {"check", "rank"}) {
      CommandLineRun run = CommandLineRun.of(command, file);
      assertThat(run.code()).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).startsWith("plyworth: " + file).contains(parts);
      assertThat(run.err().lines()).hasSize(1);
      assertThat(run.err()).doesNotContain("Exception").doesNotContain("java.");
    }
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "\"shelf_life_days\"|\"shelf_life_day\"|line 5|at brief|Is \"shelf_life_day\" meant",
        "\"question\"|\"qestion\"|line 4|at qestion|Did you mean \"question\"?",
        "kraft-paper 40 g/m2|kraft-paper 40 kg|line 52|at positions[1].options[0]|use um",
        "kraft-paper 40 g/m2|kraft-papre 40 g/m2|line 52|positions[1].options[0]|\"kraft-paper\"?",
        "@solventless\"|@solventles\"|line 59|positions[2].options[2]|Did you mean \"solventless\"",
        "lldpe 40 um|lldpe -40 um|line 79|positions[5].options[2]|greater than 0",
        "\"shelf_life_days\": 365|\"shelf_life_days\": NaN|line 21|at brief|Write null",
        "\"shelf_life_days\": 365|\"shelf_life_days\": 1e999|line 21|shelf_life_days|finite",
        "\"schema\": 5|\"schema\": 7|line 2|at schema|newer version",
        "barrier/margin|barrier/margn|line 164|weights.barrier/margn|Did you mean \"margin\"?",
        "barrier/margin|barier/margin|line 164|weights.barier/margin|Did you mean \"barrier\"?",
        "barrier/margin|odour/taint|line 164|weights.odour/taint|--leave-out odour",
        "\"margin\": 0.2|\"margn\": 0.2|line 196|settings.cost.margn|Did you mean \"margin\"?",
        "\"margin\": 0.2|\"margin\": 7|line 196|settings.cost.margin|between 0.0 and 0.9",
        "\"weighting\": \"balanced\"|\"weighting\": \"balance\"|line 184|at weighting|\"balanced\"?",
        "\"kind\": \"ink\"|\"kind\": \"inkk\"|line 84|at rules[0].kind|Did you mean \"ink\"?"
      })
  void whatIsMisspeltOrOutOfBoundsIsNamedWithItsLine(
      String right, String wrong, String line, String path, String remedy) throws IOException {
    isRefused(BrothStudy.in(folder, BrothStudy.with(right, wrong)), line, path, remedy);
  }

  /** A figure of a material that the study carries, in place of that of the library. */
  private static String kraft(String property, String unit, String figures) {
    return BrothStudy.with(
        "\"materials\": [ ]",
        "\"materials\": [ { \"id\": \"kraft-paper\", \"name\": \"Kraft paper\", \"family\": \"paper\","
            + " \"kinds\": [ \"web\", \"paper\", \"fibre\", \"porous\" ], \"basis\": \"paper\",\n\"properties\":"
            + " { \"density\": { \"unit\": \"kg/m3\", \"figures\": [ { \"typical\": 800, \"low\": 700,"
            + " \"high\": 900, \"kind\": \"memory\", \"source\": \"from memory\" } ] },\n\"%s\": { \"unit\":"
                .formatted(property)
            + " \"%s\", \"figures\": [\n%s ] } } } ]".formatted(unit, figures));
  }

  private static String figure(double low, double typical, double high) {
    return "{ \"low\": %s, \"typical\": %s, \"high\": %s,\n \"kind\": \"memory\", \"source\": \"slip\" }"
        .formatted(low, typical, high);
  }

  @Test
  void aFigureThatNoMaterialCanHaveIsNamedWithItsPlaceAndItsBound() throws IOException {
    Path file = BrothStudy.in(folder, kraft("wv-rate", "g/(m2.day)", figure(-40, 900, 1200)));
    isRefused(
        file,
        "line 202, column",
        "at materials[0].properties.wv-rate.figures[0].low",
        "the wv-rate of kraft-paper is -40 g/(m²·day). It must lie between 0 and 100000 g/(m²·day)",
        "Mend the figure or its unit; the plugin barrier reads it.");
  }

  @Test
  void everyFigureThatCannotBeGetsItsOwnMessage() {
    String two = figure(0, 0, 1).replace("{", "{ \"at\": 75,") + ",\n" + figure(1, 1, 1);
    Path file =
        BrothStudy.in(
            folder,
            kraft(
                "wv-humidity-factor",
                "1",
                two.replace("{ \"low\": 1", "{ \"at\": 175, \"low\": 1")));
    CommandLineRun run = CommandLineRun.of("check", file);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err().lines().toList())
        .hasSize(2)
        .allMatch(line -> line.startsWith("plyworth: " + file + ", line "))
        .anyMatch(line -> line.contains("figures[0].low: ") && line.contains("at 75 % RH is 0."))
        .anyMatch(line -> line.contains("figures[1].at: ") && line.contains("at 175 % RH."));
  }

  @Test
  void figuresOutOfOrderAreRefusedWhereTheyStand() throws IOException {
    Path file = BrothStudy.in(folder, kraft("wv-rate", "g/(m2.day)", figure(900, 400, 1200)));
    isRefused(file, "line 202", "wv-rate.figures[0]", "low ≤ typical ≤ high, not 900.0 / 400.0");
  }

  @Test
  void aTruncatedFileIsToBeRestored() throws IOException {
    String text = BrothStudy.text();
    isRefused(BrothStudy.in(folder, text.substring(0, text.length() / 2)), "line ", "Restore");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\n"})
  void anEmptyFileIsToBeRestored(String text) throws IOException {
    isRefused(BrothStudy.in(folder, text), "the file is empty. Restore the file.");
  }

  @Test
  void twentyMegabytesAreNoStudy() throws IOException {
    isRefused(BrothStudy.in(folder, " ".repeat(20_000_000)), "larger than 10000000 bytes");
  }

  @Test
  void onlyUtf8IsRead() throws IOException {
    Path file = folder.resolve(BrothStudy.NAME);
    String text = BrothStudy.with("A fictional", "A f\u00efctional");
    Files.write(file, text.getBytes(StandardCharsets.ISO_8859_1));
    isRefused(file, "not UTF-8");
  }

  @Test
  void aStudyWithoutCandidatesNamesTheRuleThatForbidsThem() throws IOException {
    String only = "\"only\": \"sealable\"";
    isRefused(
        BrothStudy.in(folder, BrothStudy.with(only, "\"only\": \"foil\"")),
        "line 102",
        "rules[6]",
        "\"innermost-seals\" forbids every one",
        "Without it there are 132");
  }

  @ParameterizedTest
  @CsvSource({"nowhere.study.json, does not exist", "., it is a folder"})
  void aFileThatIsNoneIsSaid(String name, String problem) {
    CommandLineRun run = CommandLineRun.of("check", folder.resolve(name));
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.err()).contains(problem).contains(folder.toString()).hasLineCount(1);
  }

  @Test
  void checkGoesOnAfterAWrongStudy() {
    Path right = BrothStudy.in(folder);
    CommandLineRun run = CommandLineRun.of("check", folder.resolve("nowhere"), right);
    assertThat(run.code()).isEqualTo(2);
    assertThat(run.out()).contains(right + ": in order, 132 candidates, 14 neighbour rules");
  }
}
