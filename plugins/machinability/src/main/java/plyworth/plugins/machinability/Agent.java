package plyworth.plugins.machinability;

import java.util.EnumSet;
import java.util.Set;
import plyworth.shared.brief.Product;

/** What in a product can attack a bond or a sealant, or disturb the seal. */
enum Agent {
  /** Ethanol, isopropanol and the like, half of the liquid or more. */
  ALCOHOL_STRONG("alcohol"),
  /** The same, less than half. */
  ALCOHOL_WEAK("alcohol"),
  /** Fat or oil. */
  FAT("fat"),
  /** Acid. */
  ACID("acid"),
  /** Menthol. */
  MENTHOL("menthol"),
  /** Fragrance and essential oils. */
  PERFUME("perfume"),
  /** Soaps and other surfactants. */
  SURFACTANT("surfactant"),
  /** Fine powder that dusts the seal. */
  FINES("fines"),
  /** Filled hot. */
  HOT_FILL("hot-fill");

  private static final Set<String> ALCOHOLS =
      Set.of("alcohol", "ethanol", "methanol", "isopropanol", "propanol");

  private final String word;

  Agent(String word) {
    this.word = word;
  }

  /** The agents in a product; a powder dusts, and alcohol of unstated strength is strong. */
  static Set<Agent> in(Product product) {
    Set<Agent> agents = EnumSet.noneOf(Agent.class);
    for (Agent agent : values()) {
      if (product.contents().contains(agent.word)) {
        agents.add(agent);
      }
    }
    if (product.form() == Product.Form.POWDER) {
      agents.add(FINES);
    }
    boolean alcohol =
        product.volatileContent().map(v -> ALCOHOLS.contains(v.substance())).orElse(false);
    if (alcohol || agents.contains(ALCOHOL_STRONG)) {
      boolean weak = alcohol && product.volatileContent().orElseThrow().massFraction() < 0.5;
      agents.add(weak ? ALCOHOL_WEAK : ALCOHOL_STRONG);
      agents.remove(weak ? ALCOHOL_STRONG : ALCOHOL_WEAK);
    }
    return agents;
  }
}
