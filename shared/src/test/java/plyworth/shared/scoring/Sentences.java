package plyworth.shared.scoring;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The sentences of a plugin, and every {@link Text} in what it declares and answers. */
final class Sentences {

  private final ResourceBundle bundle;

  Sentences(ScoringPlugin plugin) {
    bundle = plugin.texts(Locale.ENGLISH);
  }

  /** What is wrong with a text; empty when it makes a sentence. */
  String problem(Text text) {
    try {
      MessageFormat format = new MessageFormat(bundle.getString(text.key()), Locale.ENGLISH);
      if (format.getFormatsByArgumentIndex().length > text.arguments().size()) {
        return "\"" + text.key() + "\" asks for more arguments than " + text.arguments();
      }
      String sentence = format.format(text.arguments().toArray());
      return sentence.matches("(?s).*\\{\\d.*") ? "a single ' hides a {n} in: " + sentence : "";
    } catch (MissingResourceException e) {
      return "the key \"" + text.key() + "\" is not in the bundle";
    } catch (IllegalArgumentException e) {
      return "\"" + text.key() + "\" is malformed: " + e.getMessage();
    }
  }

  /** Whether the text makes a sentence that is not blank. */
  boolean says(Text text) {
    return problem(text).isEmpty()
        && !MessageFormat.format(bundle.getString(text.key()), text.arguments().toArray())
            .isBlank();
  }

  static List<Text> declared(ScoringPlugin plugin) {
    List<Text> texts = new ArrayList<>(plugin.card().cautions());
    texts.add(plugin.card().title());
    plugin.parameters().forEach(p -> texts.addAll(List.of(p.title(), p.help())));
    plugin.blockingRules().forEach(r -> texts.add(r.title()));
    for (Criterion criterion : plugin.criteria()) {
      texts.addAll(List.of(criterion.title(), criterion.formula()));
      texts.addAll(criterion.classes());
    }
    return texts;
  }

  static List<Text> of(Assessment assessment) {
    List<Text> texts = new ArrayList<>();
    assessment.findings().forEach(f -> texts.add(f.text()));
    for (Outcome outcome : assessment.outcomes().values()) {
      if (outcome instanceof Outcome.NotApplicable notApplicable) {
        texts.add(notApplicable.why());
      }
    }
    return texts;
  }

  static List<Text> of(Explanation explanation) {
    List<Text> texts = new ArrayList<>();
    for (Explanation.Section section : explanation.sections()) {
      texts.addAll(List.of(section.title(), section.basis()));
      if (section instanceof Explanation.Table table) {
        texts.addAll(table.columns());
      } else if (section instanceof Explanation.Curves curves) {
        texts.addAll(List.of(curves.x(), curves.y()));
        curves.series().forEach(s -> texts.add(s.name()));
      }
    }
    return texts;
  }
}
