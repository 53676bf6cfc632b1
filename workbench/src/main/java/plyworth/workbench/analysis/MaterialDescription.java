package plyworth.workbench.analysis;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plyworth.shared.data.Csv;
import plyworth.shared.data.Spelling;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;

/**
 * What a table of figures says of a material as a whole, in the columns behind its figures.
 *
 * @param cells texts by column, in the order of {@link #COLUMNS}
 */
record MaterialDescription(List<String> cells) {

  private static final String KINDS = "kinds";
  private static final String ALIASES = "aliases";

  /** The columns, in their order. */
  static final List<String> COLUMNS = List.of("name", "family", KINDS, "basis", ALIASES, "note");

  /** Those that hold words in any order. */
  private static final List<String> SETS = List.of(KINDS, ALIASES);

  /** What a material cannot do without. */
  private static final List<String> NEEDED = List.of("name", "family", KINDS, "basis");

  /** What a line says; every cell may be empty. */
  static MaterialDescription of(Csv.Row row) {
    return new MaterialDescription(
        COLUMNS.stream()
            .map(
                column ->
                    SETS.contains(column) ? listed(words(row.text(column))) : row.text(column))
            .toList());
  }

  /** What a line would say of a material. */
  static MaterialDescription of(Material material) {
    return new MaterialDescription(
        List.of(
            material.name(),
            material.family(),
            listed(material.kinds()),
            material.basis(),
            listed(material.aliases()),
            material.note()));
  }

  /** What a line says that does not describe its material. */
  static MaterialDescription none() {
    return new MaterialDescription(COLUMNS.stream().map(column -> "").toList());
  }

  boolean empty() {
    return equals(none());
  }

  private String text(String column) {
    return cells.get(COLUMNS.indexOf(column));
  }

  private static Set<String> words(String text) {
    return Stream.of(text.split("\\s+"))
        .filter(word -> !word.isEmpty())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static String listed(Collection<String> words) {
    return String.join(" ", new TreeSet<>(words));
  }

  /**
   * A material of which nothing is known but its density.
   *
   * @throws IllegalArgumentException for a malformed id
   */
  Material material(String id, Property density) {
    return new Material(
        id,
        text("name"),
        text("family"),
        words(text(KINDS)),
        text("basis"),
        List.copyOf(words(text(ALIASES))),
        Map.of(density.id(), density),
        text("note"));
  }

  /**
   * The columns that say something else of a material that is there; an empty cell says nothing.
   */
  List<String> unlike(Material there) {
    List<String> said = of(there).cells();
    return IntStream.range(0, cells.size())
        .filter(i -> !cells.get(i).isEmpty() && !cells.get(i).equals(said.get(i)))
        .mapToObj(COLUMNS::get)
        .toList();
  }

  /** Why no material can be made of it; empty when one can. */
  Optional<String> objection(MaterialLibrary library) {
    List<String> missing = NEEDED.stream().filter(column -> text(column).isEmpty()).toList();
    if (!missing.isEmpty()) {
      return Optional.of(
          "a new material needs " + String.join(", ", missing) + ". Fill these cells in its line.");
    }
    Optional<String> kinds =
        words(text(KINDS)).stream()
            .flatMap(
                kind ->
                    unknown(kind, "\" is not a kind. ", known(library, m -> m.kinds().stream()))
                        .stream())
            .findFirst();
    return kinds.or(
        () ->
            unknown(
                text("basis"), "\" is not a basis. ", known(library, m -> Stream.of(m.basis()))));
  }

  private static Optional<String> unknown(String word, String what, Set<String> known) {
    return known.contains(word)
        ? Optional.empty()
        : Optional.of("\"" + word + what + Spelling.suggestion(word, known));
  }

  private static Set<String> known(
      MaterialLibrary library, Function<Material, Stream<String>> words) {
    return library.all().stream().flatMap(words).collect(Collectors.toCollection(TreeSet::new));
  }
}
