package plyworth.shared.material;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import plyworth.shared.data.Csv;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Resources;
import plyworth.shared.data.Spelling;

/** The materials at hand, found by id or alias. */
public final class MaterialLibrary {

  private static final List<String> HEADER =
      List.of("id", "name", "family", "kinds", "basis", "aliases", "note");

  private final Map<String, Material> byId;
  private final Map<String, Material> byName;

  private MaterialLibrary(Map<String, Material> byId) {
    this.byId = Collections.unmodifiableMap(new LinkedHashMap<>(byId));
    this.byName = new HashMap<>(byId);
    byId.values().forEach(m -> m.aliases().forEach(alias -> byName.putIfAbsent(alias, m)));
  }

  /**
   * A library of the given materials.
   *
   * @throws IllegalArgumentException when an id stands twice
   */
  public static MaterialLibrary of(Collection<Material> materials) {
    Map<String, Material> byId = new LinkedHashMap<>();
    for (Material material : materials) {
      if (byId.put(material.id(), material) != null) {
        throw new IllegalArgumentException("the material " + material.id() + " stands twice");
      }
    }
    return new MaterialLibrary(byId);
  }

  /** The library that comes with the product, read strictly from its data files. */
  public static MaterialLibrary standard() {
    return Standard.LIBRARY;
  }

  /** This library, with the given materials added or put in place of those of the same id. */
  public MaterialLibrary with(Collection<Material> materials) {
    Map<String, Material> merged = new LinkedHashMap<>(byId);
    materials.forEach(m -> merged.put(m.id(), m));
    return new MaterialLibrary(merged);
  }

  /** All materials, in file order. */
  public Collection<Material> all() {
    return byId.values();
  }

  /** The material of that id or alias. */
  public Optional<Material> find(String idOrAlias) {
    return Optional.ofNullable(byName.get(idOrAlias));
  }

  /**
   * The material of that id or alias.
   *
   * @throws IllegalArgumentException when there is none, with the nearest id
   */
  public Material require(String idOrAlias) {
    Material material = byName.get(idOrAlias);
    if (material == null) {
      throw new IllegalArgumentException(
          ("the material \"" + idOrAlias + "\" is not in the library. ")
              + Spelling.suggestion(idOrAlias, byName.keySet()));
    }
    return material;
  }

  /** Reads a library from the texts of its two tables; the names are for messages. */
  static MaterialLibrary read(String materials, String properties) {
    Map<String, Map<String, Property>> figures =
        PropertyTable.read(properties, "properties.csv", "material", "property");
    List<Material> read = new ArrayList<>();
    for (Csv.Row row : Csv.read(materials, "materials.csv", HEADER)) {
      try {
        read.add(material(row, figures.getOrDefault(row.text("id"), Map.of())));
      } catch (IllegalArgumentException e) {
        throw new DataException(row.place(), e.getMessage(), "");
      }
    }
    MaterialLibrary library = of(read);
    for (String subject : figures.keySet()) {
      library.require(subject);
    }
    return library;
  }

  private static Material material(Csv.Row row, Map<String, Property> properties) {
    return new Material(
        row.text("id"),
        row.text("name"),
        row.text("family"),
        words(row.text("kinds")),
        row.text("basis"),
        List.copyOf(words(row.text("aliases"))),
        properties,
        row.text("note"));
  }

  private static Set<String> words(String text) {
    return text.isBlank() ? Set.of() : new TreeSet<>(Arrays.asList(text.strip().split("\\s+")));
  }

  private static final class Standard {
    static final MaterialLibrary LIBRARY =
        read(
            Resources.text(MaterialLibrary.class, "materials.csv"),
            Resources.text(MaterialLibrary.class, "properties.csv"));
  }
}
