package plyworth.workbench.desktop.word;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.data.Csv;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.StructureText;
import plyworth.shared.store.StudyFile;

class ReasonTest {

  /** What begins a refusal in the code. */
  private static final Pattern REFUSAL =
      Pattern.compile(
          "(ArgumentException|DataException|FaultException|RefusedLine|Dangling|PluginFault|PluginFailure|wrong|unusable|\\badd"
              + "|positive|between|notNegative)\\(");

  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Pattern SENTENCE = Pattern.compile("[a-z]{2,} [a-z]{2,}");
  private static final Pattern JOINED = Pattern.compile("(?<!\\\\)\"\\s*\\+\\s*\"");

  @BeforeEach
  void speakChinese() {
    Language.CHINESE.speak();
  }

  @AfterEach
  void speakEnglish() {
    Language.ENGLISH.speak();
  }

  private static String said(ThrowingCallable refused) {
    return Reason.of(catchThrowable(refused).getMessage());
  }

  private static void read(String notation) {
    new StructureText(MaterialLibrary.standard(), ProcessLibrary.standard()).read(notation);
  }

  @Test
  void aLayerThatCannotBeIsRefusedInChinese() {
    assertThat(said(() -> read("ldpe -3 um"))).isEqualTo("层“ldpe -3 um”：ldpe 的用量为 -3.0；必须大于 0 µm");
    assertThat(said(() -> read("lpde 30 um"))).isEqualTo("材料“lpde”不在材料库中。是否指“ldpe”？");
    assertThat(said(() -> read("ldpe 30 um / "))).contains("“/”旁缺少一层");
    assertThat(said(() -> read("ldpe 30 um !up")))
        .contains("“up”不是面。此处可用：bright-out, matt-out, metal-out, metal-in。");
  }

  @Test
  void aFigureOutsideItsBoundsIsRefusedInChinese() {
    assertThat(said(() -> new Season(30, 99, 50))).isEqualTo("贮存温度为 99.0；必须在 -40.0 与 70.0 °C 之间");
    assertThat(said(() -> new Season(0, 20, 50))).isEqualTo("时段长度为 0.0；必须大于 0 天");
  }

  @Test
  void aFileThatCannotBeReadIsRefusedInChineseWithItsPlace(@TempDir Path folder)
      throws IOException {
    Path file = Files.writeString(folder.resolve("a.study.json"), "{\"schema\": 3,");
    assertThat(said(() -> StudyFile.open(file)))
        .matches("a.study.json，第 1 行第 \\d+ 列.*：文件在内容完整之前结束。请恢复完整的文件。");
    assertThat(said(() -> StudyFile.open(folder.resolve("none")))).startsWith("none：文件不存在。请检查 ");
    assertThat(said(() -> Csv.read("a;b\n", "t.csv", List.of("a", "b"))))
        .isEqualTo("t.csv，第 1 行：现有的列为 a;b。各列必须为 a,b。");
  }

  @Test
  void severalRefusalsKeepTheirLines() {
    assertThat(
            Reason.of("a.json: the file is empty. Restore the file.\n\nthe study has no position"))
        .isEqualTo("a.json：文件是空的。请恢复该文件。\n\n研究没有层位");
  }

  @Test
  void whatIsNotKnownStaysAsItIs() {
    assertThat(Reason.of("a plugin from elsewhere: says this or that. And more."))
        .isEqualTo("a plugin from elsewhere: says this or that. And more.");
  }

  @Test
  void englishStaysEnglish() {
    Language.ENGLISH.speak();
    assertThat(Reason.of("the file is empty")).isEqualTo("the file is empty");
  }

  @Test
  void everyRefusalOfTheCodeHasItsWording() throws IOException {
    String wordings = String.join("\n", wordings());
    assertThat(refusals().stream().flatMap(ReasonTest::parts))
        .filteredOn(part -> SENTENCE.matcher(part).find())
        .filteredOn(part -> !wordings.contains(part))
        .isEmpty();
  }

  @Test
  void everyWordingIsOneOfTheCode() throws IOException {
    String code = code(List.of("../shared/src/main", "src/main", "../plugins/barrier/src/main"));
    assertThat(wordings().stream().flatMap(ReasonTest::parts))
        .filteredOn(part -> !code.contains(part.replaceFirst("^the file ", "")))
        .isEmpty();
  }

  /** What stands between places, quotes and stops. */
  private static Stream<String> parts(String text) {
    return Stream.of(text.split(" ?\\{\\d}|\"|[.,;:] |[.?]$| above 0"))
        .map(part -> part.strip().replaceFirst(" at$", ""));
  }

  private static List<String> wordings() {
    return Reason.bundle(Locale.ENGLISH).keySet().stream()
        .map(Reason.bundle(Locale.ENGLISH)::getString)
        .toList();
  }

  /** The texts of what refuses, in the rooms whose refusals users can meet. */
  private static Set<String> refusals() throws IOException {
    Set<String> texts = new TreeSet<>();
    String code = code(rooms());
    Matcher refusal = REFUSAL.matcher(code);
    while (refusal.find()) {
      LITERAL
          .matcher(code.substring(refusal.end(), end(code, refusal.end())))
          .results()
          .map(ReasonTest::text)
          .forEach(texts::add);
    }
    return texts;
  }

  private static String text(MatchResult literal) {
    return literal.group(1).replace("\\\"", "\"");
  }

  /** Where the bracket closes that was opened before. */
  private static int end(String code, int from) {
    int open = 1;
    boolean inText = false;
    int at = from;
    while (open > 0) {
      char c = code.charAt(at);
      if (c == '"' && code.charAt(at - 1) != '\\') {
        inText = !inText;
      } else if (!inText) {
        open += c == '(' ? 1 : c == ')' ? -1 : 0;
      }
      at++;
    }
    return at;
  }

  private static List<String> rooms() {
    String shared = "../shared/src/main/java/plyworth/shared/";
    String workbench = "src/main/java/plyworth/workbench/";
    return Stream.concat(
            Stream.of("data", "material", "structure", "brief", "route", "plant", "study", "store")
                .map(shared::concat),
            Stream.of("host", "analysis", "engine/graph/Objections.java", "robustness/turn")
                .map(workbench::concat))
        .toList();
  }

  private static String code(List<String> rooms) throws IOException {
    StringBuilder code = new StringBuilder();
    for (String room : rooms) {
      try (Stream<Path> files = Files.walk(Path.of(room))) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          code.append(Files.readString(file));
        }
      }
    }
    return JOINED.matcher(code).replaceAll("");
  }
}
