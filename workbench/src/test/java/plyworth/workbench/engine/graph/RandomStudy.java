package plyworth.workbench.engine.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import plyworth.shared.structure.KindExpression;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;

/**
 * Positions and rules drawn at random, few layers over many positions, so that one layer list is
 * often spelled in several ways.
 */
record RandomStudy(List<Position> positions, List<NeighbourRule> rules) {

  private static final String[] WORDS =
      ("web -web porous -porous dense sealable resin -resin film bond coating print web-part"
              + " sticky @melt-bond @glue-bond")
          .split(" ");

  static RandomStudy of(long seed) {
    Random random = new Random(seed);
    List<Layer> layers = new ArrayList<>(SmallLibrary.LAYERS);
    Collections.shuffle(layers, random);
    List<Layer> few = layers.subList(0, 3 + random.nextInt(6));
    List<Position> positions = new ArrayList<>();
    int count = 1 + random.nextInt(5);
    for (int i = 0; i < count; i++) {
      boolean again = i > 0 && random.nextInt(3) == 0;
      positions.add(again ? positions.get(i - 1) : position("position " + i, few, random));
    }
    List<NeighbourRule> rules = new ArrayList<>();
    int ruleCount = random.nextInt(4);
    for (int i = 0; i < ruleCount; i++) {
      rules.add(rule("rule-" + i, random));
    }
    return new RandomStudy(positions, rules);
  }

  private static Position position(String title, List<Layer> layers, Random random) {
    Set<Option> options = new LinkedHashSet<>();
    int count = 1 + random.nextInt(4);
    while (options.size() < count) {
      int length = Math.max(0, random.nextInt(5) - 1);
      List<Layer> option = new ArrayList<>();
      while (option.size() < length) {
        option.add(layers.get(random.nextInt(layers.size())));
      }
      options.add(new Option(option));
    }
    return new Position(title, List.copyOf(options));
  }

  private static NeighbourRule rule(String id, Random random) {
    KindExpression a = kind(random);
    KindExpression b = kind(random);
    return switch (random.nextInt(8)) {
      case 0 -> new NeighbourRule.Neighbours(id, a, b, "reason", "test");
      case 1 -> new NeighbourRule.WebBondWeb(id, a, kind(random), b, "reason", "test");
      case 2 -> new NeighbourRule.WebBondWeb(id, a, null, b, "reason", "test");
      case 3 -> new NeighbourRule.Outermost(id, either(a, b), "reason", "test");
      case 4 -> new NeighbourRule.Innermost(id, either(a, b), "reason", "test");
      case 5 -> new NeighbourRule.Face(id, a, b, "reason", "test");
      case 6 -> new NeighbourRule.AtMost(id, a, random.nextInt(4), "reason", "test");
      default -> new NeighbourRule.AtLeast(id, a, 1 + random.nextInt(3), "reason", "test");
    };
  }

  private static KindExpression either(KindExpression a, KindExpression b) {
    return new KindExpression(a.text() + " | " + b.text());
  }

  private static KindExpression kind(Random random) {
    String text = word(random);
    if (random.nextInt(3) == 0) {
      text += (random.nextBoolean() ? " " : " | ") + word(random);
    }
    return new KindExpression(text);
  }

  private static String word(Random random) {
    return WORDS[random.nextInt(WORDS.length)];
  }
}
