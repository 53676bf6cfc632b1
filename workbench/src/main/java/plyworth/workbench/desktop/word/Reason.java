package plyworth.workbench.desktop.word;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Why something was refused, in the language in force. Records, readers and the command line say it
 * in English; here it is recognised by its wording, and said again. What is not recognised stays as
 * it is, so that nothing is lost.
 */
public final class Reason {

  private static final Pattern PLACE = Pattern.compile("\\{\\d}");
  private static final Pattern CARRYING = Pattern.compile(": \\{\\d}$");
  private static final Pattern END = Pattern.compile("(?<=[.?]) ");

  /** Begins the keys of wordings that are part of a sentence, never sentences themselves. */
  private static final String PART = "part.";

  /** What carries another message comes first, then what says more before what fits more. */
  private static final List<Wording> WORDINGS =
      bundle(Locale.ENGLISH).keySet().stream()
          .map(Wording::of)
          .sorted(
              Comparator.comparing(Wording::carries)
                  .thenComparing(Wording::weight)
                  .reversed()
                  .thenComparing(Wording::key))
          .toList();

  private Reason() {}

  /** A message in the language in force; its lines, and their sentences, one by one. */
  public static String of(String english) {
    return Language.inForce() == Language.ENGLISH
        ? english
        : english.lines().map(Reason::line).collect(Collectors.joining("\n"));
  }

  private static String line(String english) {
    return known(english, false).orElseGet(() -> sentences(english));
  }

  /** What is not known keeps its stop. */
  private static String sentences(String english) {
    StringBuilder said = new StringBuilder();
    for (String sentence : END.split(english)) {
      String bare =
          sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
      Optional<String> known = known(bare, false).or(() -> known(sentence, false));
      said.append(said.isEmpty() || said.toString().endsWith("。") ? "" : " ");
      said.append(known.map(Reason::closed).orElse(sentence));
    }
    return said.toString();
  }

  private static String closed(String sentence) {
    return sentence.matches(".*[。？]") ? sentence : sentence + "。";
  }

  private static Optional<String> known(String english, boolean part) {
    return WORDINGS.stream()
        .filter(wording -> part || !wording.key().startsWith(PART))
        .flatMap(wording -> wording.said(english).stream())
        .findFirst();
  }

  /** Wordings by key in a language. */
  static ResourceBundle bundle(Locale locale) {
    return ResourceBundle.getBundle(
        "plyworth.workbench.desktop.reasons",
        locale,
        ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
  }

  /**
   * A wording with places for what it speaks of.
   *
   * @param key its key
   * @param english the English wording
   * @param pattern what has this wording
   */
  private record Wording(String key, String english, Pattern pattern) {

    static Wording of(String key) {
      String english = bundle(Locale.ENGLISH).getString(key);
      String pattern =
          Stream.of(PLACE.split(english, -1))
              .map(Pattern::quote)
              .collect(Collectors.joining("(.*?)"));
      return new Wording(key, english, Pattern.compile(pattern));
    }

    /** How many letters it has beside its places. */
    long weight() {
      return PLACE.matcher(english).replaceAll("").chars().filter(Character::isLetter).count();
    }

    /** Whether it says where, and then brings another message. */
    boolean carries() {
      return CARRYING.matcher(english).find();
    }

    /** A text in the language in force, where it has this wording. */
    Optional<String> said(String text) {
      Matcher found = pattern.matcher(text);
      if (!found.matches() || !carries() && END.matcher(text).find()) {
        return Optional.empty();
      }
      List<String> spoken = new ArrayList<>();
      for (int i = 1; i <= found.groupCount(); i++) {
        String about = found.group(i);
        boolean part = !carries() || i < found.groupCount();
        spoken.add(part ? known(about, true).orElse(about) : line(about));
      }
      // any colon would do for a place, so what follows must be known
      boolean stays = weight() == 0 && text.endsWith(spoken.get(spoken.size() - 1));
      return stays ? Optional.empty() : Optional.of(filled(spoken));
    }

    private String filled(List<String> spoken) {
      List<String> places = PLACE.matcher(english).results().map(MatchResult::group).toList();
      return PLACE
          .matcher(bundle(Language.inForce().locale()).getString(key))
          .replaceAll(place -> Matcher.quoteReplacement(spoken.get(places.indexOf(place.group()))))
          .strip();
    }
  }
}
