package plyworth.shared.brief;

import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is packed, and what harms it.
 *
 * @param name name on screens
 * @param form physical form
 * @param massG mass in one pack, g
 * @param contents what may attack the inner layer or dust the seal, out of {@link #CONTENTS}
 * @param moisture how moisture spoils it; empty when it does not
 * @param oxygen how oxygen spoils it; empty when it does not
 * @param volatileContent what must not escape; empty when nothing can
 */
public record Product(
    String name,
    Form form,
    double massG,
    Set<String> contents,
    Optional<MoistureLimit> moisture,
    Optional<OxygenLimit> oxygen,
    Optional<VolatileContent> volatileContent) {

  /** The contents that rules speak of. */
  public static final Set<String> CONTENTS =
      Set.of("alcohol", "fat", "acid", "menthol", "perfume", "surfactant", "fines", "hot-fill");

  /** Physical form of a product. */
  public enum Form {
    /** Free-flowing crystals. */
    CRYSTALS,
    /** Powder that dusts. */
    POWDER,
    /** Pieces. */
    PIECES,
    /** A wet tissue. */
    WIPE,
    /** A liquid or paste. */
    LIQUID
  }

  /** Checks the mass, sorts the contents. */
  public Product {
    Check.positive("the product mass", massG, "g");
    contents = Collections.unmodifiableSet(new TreeSet<>(contents));
  }
}
