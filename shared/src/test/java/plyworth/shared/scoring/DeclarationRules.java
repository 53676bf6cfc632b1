package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyDefinition;

/** Rules on what a plugin declares. */
final class DeclarationRules {

  private static final String ID = "[a-z0-9]+(-[a-z0-9]+)*";

  private DeclarationRules() {}

  static void idsAreWellFormedAndUnique(ScoringPlugin plugin) {
    checkIds("criteria", plugin.criteria().stream().map(Criterion::id).toList());
    checkIds("parameters", plugin.parameters().stream().map(Parameter::id).toList());
    checkIds("blocking rules", plugin.blockingRules().stream().map(BlockingRule::id).toList());
    checkIds("properties", plugin.properties().stream().map(PropertyDefinition::id).toList());
    assertThat(plugin.criteria()).as("criteria").isNotEmpty();
    assertThat(plugin.blockingRules()).as("blocking rules").hasSizeLessThanOrEqualTo(64);
    assertThat(plugin.provides()).as("provided figures").doesNotHaveDuplicates();
    assertThat(plugin.needs())
        .as("needed figures")
        .doesNotHaveDuplicates()
        .noneMatch(plugin.provides()::contains);
  }

  private static void checkIds(String what, List<String> ids) {
    assertThat(ids).as(what).doesNotHaveDuplicates().allMatch(id -> id.matches(ID));
  }

  static void valueFunctionsFollowTheirDirection(ScoringPlugin plugin) {
    for (Criterion criterion : plugin.criteria()) {
      List<Double> values =
          criterion.value().points().stream().map(ValueFunction.Point::value).toList();
      if (criterion.direction() == Criterion.Direction.HIGHER) {
        assertThat(values).as(criterion.id()).isSorted();
      } else if (criterion.direction() == Criterion.Direction.LOWER) {
        assertThat(values).as(criterion.id()).isSortedAccordingTo((a, b) -> Double.compare(b, a));
      }
    }
  }

  static void propertiesAgreeWithTheLibrary(ScoringPlugin plugin) {
    Set<String> keys = plugin.texts(Locale.ENGLISH).keySet();
    for (PropertyDefinition definition : plugin.properties()) {
      assertThat(definition.meaning()).as("the meaning of " + definition.id()).isNotBlank();
      assertThat(definition.meaning().contains(" ") || keys.contains(definition.meaning()))
          .as("the meaning of " + definition.id() + " is a sentence, or the key of one")
          .isTrue();
      for (Material material : MaterialLibrary.standard().all()) {
        material.property(definition.id()).ifPresent(p -> agrees(definition, material, p));
      }
    }
  }

  private static void agrees(PropertyDefinition definition, Material material, Property property) {
    String what = definition.id() + " of " + material.id();
    assertThat(property.unit()).as("unit of " + what).isEqualTo(definition.unit());
    assertThat(property.points())
        .as(what + " lies within " + definition.lowest() + " … " + definition.highest())
        .allMatch(p -> p.range().low() >= definition.lowest())
        .allMatch(p -> p.range().high() <= definition.highest());
    if (definition.along() == PropertyDefinition.Along.NOTHING) {
      assertThat(property.points()).as(what + ", declared to hold always").hasSize(1);
    }
  }

  static void cautionsSaySomething(ScoringPlugin plugin) {
    Sentences sentences = new Sentences(plugin);
    assertThat(plugin.card().cautions())
        .isNotEmpty()
        .allSatisfy(c -> assertThat(sentences.says(c)).as("caution " + c.key()).isTrue());
  }

  static void knowsNoWindows(ScoringPlugin plugin) throws IOException {
    assertThat(ClassReferences.from(plugin.getClass()))
        .as("names that the classes of the plugin speak of")
        .isNotEmpty()
        .noneMatch(n -> n.contains("java/awt/") || n.contains("javax/swing/"));
  }
}
