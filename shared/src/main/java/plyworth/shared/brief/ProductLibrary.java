package plyworth.shared.brief;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import plyworth.shared.data.Csv;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Resources;
import plyworth.shared.data.Spelling;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyTable;

/**
 * Products whose sorption is known, by id.
 *
 * @param products products by id
 */
public record ProductLibrary(Map<String, KnownProduct> products) {

  private static final List<String> HEADER = List.of("id", "name", "form", "note");

  private static final String UNKNOWN = "unknown";

  private static final String SHARE = "sorbing-share";

  /** Figures that any product may have, whatever its form. */
  private static final Set<String> COMMON =
      Set.of(
          KnownProduct.CRITICAL_ACTIVITY,
          KnownProduct.CRITICAL_MOISTURE,
          KnownProduct.LOWEST_ACTIVITY,
          KnownProduct.HIGHEST_ACTIVITY,
          SHARE);

  /** The figures that each form is made of; those of an unknown form are hints. */
  private static final Map<String, Set<String>> FORMS =
      Map.of(
          "linear",
          Set.of("slope"),
          "gab",
          Set.of("monolayer", "c", "k"),
          "gab-by-temperature",
          Set.of("monolayer", "c-factor", "c-heat", "k-factor", "k-heat"),
          "deliquescent",
          Set.of("deliquescence", "allowed-uptake"),
          "deliquescent-by-temperature",
          Set.of("deliquescence-slope", "deliquescence-offset", "allowed-uptake"),
          UNKNOWN,
          Set.of());

  /** Copies, order kept. */
  public ProductLibrary {
    products = Collections.unmodifiableMap(new LinkedHashMap<>(products));
  }

  /** The products that come along, read strictly from their data files. */
  public static ProductLibrary standard() {
    return Standard.LIBRARY;
  }

  /** The product of that id. */
  public Optional<KnownProduct> find(String id) {
    return Optional.ofNullable(products.get(id));
  }

  /** Reads a library from the texts of its two tables. */
  static ProductLibrary read(String products, String figures) {
    Map<String, Map<String, Property>> byProduct =
        PropertyTable.read(figures, "product-figures.csv", "product", "figure");
    Map<String, KnownProduct> read = new LinkedHashMap<>();
    for (Csv.Row row : Csv.read(products, "products.csv", HEADER)) {
      KnownProduct product = product(row, byProduct.getOrDefault(row.text("id"), Map.of()));
      if (read.put(product.id(), product) != null) {
        throw new DataException(row.place(), product.id() + " stands twice", "Remove one.");
      }
    }
    for (String subject : byProduct.keySet()) {
      if (!read.containsKey(subject)) {
        throw new IllegalArgumentException(
            "the product \""
                + subject
                + "\" is not known. "
                + Spelling.suggestion(subject, read.keySet()));
      }
    }
    return new ProductLibrary(read);
  }

  private static KnownProduct product(Csv.Row row, Map<String, Property> figures) {
    String form = row.text("form");
    Set<String> constants = FORMS.get(form);
    if (constants == null) {
      throw new DataException(
          row.place(),
          "\"" + form + "\" is not a form of sorption",
          Spelling.suggestion(form, FORMS.keySet()));
    }
    checkFigures(row, constants, figures.keySet());
    Optional<Sorption> law =
        form.equals(UNKNOWN)
            ? Optional.empty()
            : Optional.of(law(form, id -> figures.get(id).range().typical(), share(figures)));
    return new KnownProduct(row.text("id"), row.text("name"), law, figures, row.text("note"));
  }

  private static void checkFigures(Csv.Row row, Set<String> constants, Set<String> given) {
    Set<String> missing = new TreeSet<>(constants);
    missing.removeAll(given);
    Set<String> needless = new TreeSet<>(given);
    needless.removeAll(constants);
    needless.removeAll(COMMON);
    if (row.text("form").equals(UNKNOWN)) {
      needless.clear();
    }
    if (!missing.isEmpty() || !needless.isEmpty()) {
      throw new DataException(
          row.place(),
          "the figures of " + row.text("id") + " do not fit its form",
          "Add " + missing + ", remove " + needless + ".");
    }
  }

  private static double share(Map<String, Property> figures) {
    return figures.containsKey(SHARE) ? figures.get(SHARE).range().typical() : 1;
  }

  /** The law of a form; {@code share} of the dry mass holds the water, the rest holds none. */
  private static Sorption law(String form, ToDoubleFunction<String> of, double share) {
    return switch (form) {
      case "linear" -> new Isotherm.Linear(share * of.applyAsDouble("slope"));
      case "gab" ->
          new Isotherm.Gab(
              share * of.applyAsDouble("monolayer"), of.applyAsDouble("c"), of.applyAsDouble("k"));
      case "gab-by-temperature" ->
          new SorptionLaw.Gab(
              share * of.applyAsDouble("monolayer"),
              of.applyAsDouble("c-factor"),
              of.applyAsDouble("c-heat"),
              of.applyAsDouble("k-factor"),
              of.applyAsDouble("k-heat"));
      case "deliquescent" ->
          new Isotherm.Deliquescent(
              of.applyAsDouble("deliquescence"), of.applyAsDouble("allowed-uptake"));
      default ->
          new SorptionLaw.Deliquescence(
              of.applyAsDouble("deliquescence-slope"),
              of.applyAsDouble("deliquescence-offset"),
              of.applyAsDouble("allowed-uptake"));
    };
  }

  private static final class Standard {
    static final ProductLibrary LIBRARY =
        read(
            Resources.text(ProductLibrary.class, "products.csv"),
            Resources.text(ProductLibrary.class, "product-figures.csv"));
  }
}
