package plyworth.shared.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.data.Choice;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.data.JsonText;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.ProcessRole;

class NeighbourRulesTest {

  private static NeighbourRule reread(NeighbourRule rule) {
    return NeighbourRules.read(JsonText.read(JsonPrint.text(NeighbourRules.write(rule)), "rule"));
  }

  @Test
  void standardRulesAreReadBackEqual() {
    assertThat(NeighbourRules.standard())
        .hasSizeGreaterThan(20)
        .allSatisfy(rule -> assertThat(reread(rule)).isEqualTo(rule));
  }

  @Test
  void everyFormIsReadBackEqual() {
    KindExpression web = new KindExpression("web");
    List<NeighbourRule> forms =
        List.of(
            new NeighbourRule.Neighbours("a", web, web, "why", "common practice"),
            new NeighbourRule.WebBondWeb("b", web, null, web, "why", "common practice"),
            new NeighbourRule.WebBondWeb("c", web, web, web, "why", "common practice"),
            new NeighbourRule.Outermost("d", web, "why", "common practice"),
            new NeighbourRule.Innermost("e", web, "why", "common practice"),
            new NeighbourRule.AtMost("f", web, 0, "why", "common practice"),
            new NeighbourRule.AtLeast("g", web, 2, "why", "common practice"),
            new NeighbourRule.Face("h", web, web, "why", "common practice"));
    assertThat(forms.stream().map(NeighbourRulesTest::reread)).isEqualTo(forms);
  }

  @Test
  void everyStandardRuleHasAnIdOfItsOwnAReasonAndASource() {
    List<NeighbourRule> rules = NeighbourRules.standard();
    assertThat(rules.stream().map(NeighbourRule::id)).doesNotHaveDuplicates();
    assertThat(rules)
        .allSatisfy(rule -> assertThat(rule.reason()).endsWith("."))
        .allSatisfy(rule -> assertThat(rule.source()).isNotBlank());
  }

  @Test
  void standardRulesSpeakOnlyOfTagsThatALayerCanHave() {
    Set<String> known = knownTags();
    for (NeighbourRule rule : NeighbourRules.standard()) {
      Json.Obj written = (Json.Obj) NeighbourRules.write(rule);
      assertThat(
              Stream.of("outer", "bond", "inner", "only", "kind")
                  .map(written.entries()::get)
                  .filter(json -> json instanceof Json.Text)
                  .map(json -> ((Json.Text) json).text())
                  .filter(text -> !text.equals("none"))
                  .flatMap(text -> Arrays.stream(text.strip().split("[\\s|]+")))
                  .map(word -> word.startsWith("-") ? word.substring(1) : word))
          .as(rule.id())
          .isNotEmpty()
          .isSubsetOf(known);
    }
  }

  private static Set<String> knownTags() {
    Set<String> known = new TreeSet<>();
    for (Material material : MaterialLibrary.standard().all()) {
      known.addAll(material.kinds());
      known.add(material.id());
      known.add(material.family());
    }
    ProcessLibrary.standard().processes().keySet().forEach(id -> known.add("@" + id));
    known.addAll(
        Arrays.stream(ProcessRole.values()).map(Choice::plain).collect(Collectors.toSet()));
    return known;
  }

  @ParameterizedTest
  @CsvSource({
    "at-moust, '\"at-moust\" is not a form of rule. Did you mean \"at-most\"?'",
    "neighbours, 'the key \"allowed\" is missing'"
  })
  void malformedRuleIsRefused(String form, String problem) {
    Json rule =
        Json.of(
            Map.of(
                "rule",
                Json.of(form),
                "id",
                Json.of("x"),
                "reason",
                Json.of("why"),
                "source",
                Json.of("common practice"),
                "kind",
                Json.of("web"),
                "n",
                Json.of(1)));
    assertThatThrownBy(() -> NeighbourRules.read(rule))
        .isInstanceOf(DataException.class)
        .hasMessageContaining(problem);
  }

  @Test
  void ruleCannotAllow() {
    String text =
        "{\"rule\":\"neighbours\",\"id\":\"x\",\"outer\":\"a\",\"inner\":\"b\","
            + "\"allowed\":true,\"reason\":\"r\",\"source\":\"s\"}";
    assertThatThrownBy(() -> NeighbourRules.read(JsonText.read(text, "rules")))
        .hasMessageContaining("a rule can only forbid");
  }
}
