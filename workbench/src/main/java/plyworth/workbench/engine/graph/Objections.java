package plyworth.workbench.engine.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.Objection;

/** Why a structure is not among the candidates of a study. */
public final class Objections {

  private static final int MOST_NAMED = 5;

  private final LayerAlphabet alphabet;
  private final int[] layers;
  private final List<Objection> found = new ArrayList<>();

  private Objections(Structure structure, LayerAlphabet alphabet) {
    this.alphabet = alphabet;
    this.layers = structure.layers().stream().mapToInt(alphabet::add).toArray();
  }

  /**
   * All reasons against a structure: where the positions first do not offer it, then every rule
   * that forbids it, each as often as it is broken. Empty exactly when the structure is a
   * candidate.
   *
   * @throws IllegalArgumentException when the structure or a position names a material or process
   *     that is not known
   */
  public static List<Objection> of(
      Structure structure,
      List<Position> positions,
      List<NeighbourRule> rules,
      MaterialLibrary materials,
      ProcessLibrary processes) {
    LayerAlphabet alphabet = new LayerAlphabet(materials, processes);
    alphabet.addAll(positions);
    Objections objections = new Objections(structure, alphabet);
    objections.askPositions(positions);
    rules.forEach(objections::askRule);
    return List.copyOf(objections.found);
  }

  private void askPositions(List<Position> positions) {
    PositionAutomaton automaton = new PositionAutomaton(positions, alphabet);
    int state = PositionAutomaton.START;
    for (int i = 0; i < layers.length; i++) {
      int next = automaton.next(state, layers[i]);
      if (next == PositionAutomaton.NONE) {
        int[] offered = automaton.layers(state);
        add(
            offered.length == 0
                ? "no position offers anything " + after(i)
                : "no position offers " + named(i) + " " + after(i) + ", only " + choice(offered),
            i);
        return;
      }
      state = next;
    }
    if (!automaton.ends(state)) {
      add("the structure stops short: inside it must follow " + choice(automaton.layers(state)));
    }
  }

  private void askRule(NeighbourRule rule) {
    RuleReader reader = RuleReader.of(rule, alphabet);
    int memory = RuleReader.START;
    boolean forbidden = false;
    for (int i = 0; i < layers.length; i++) {
      if (reader.forbids(memory, layers[i]) && !(forbidden && countsAll(rule))) {
        forbidden = true;
        found.add(new Objection(rule.id(), rule.reason(), rule.source(), concerned(rule, i)));
      }
      memory = reader.after(memory, layers[i]);
    }
    if (reader.forbidsEnd(memory)) {
      int last = layers.length - 1;
      found.add(new Objection(rule.id(), rule.reason(), rule.source(), concerned(rule, last)));
    }
  }

  private static boolean countsAll(NeighbourRule rule) {
    return rule instanceof NeighbourRule.AtMost;
  }

  /** The layers that a rule speaks of when it objects at a layer. */
  private List<Integer> concerned(NeighbourRule rule, int at) {
    if (rule instanceof NeighbourRule.AtMost r) {
      return ofKind(alphabet.matching(r.kind()));
    } else if (rule instanceof NeighbourRule.AtLeast r) {
      return ofKind(alphabet.matching(r.kind()));
    } else if (rule instanceof NeighbourRule.Neighbours || rule instanceof NeighbourRule.Face) {
      return List.of(at - 1, at);
    } else if (rule instanceof NeighbourRule.WebBondWeb) {
      return joint(at);
    }
    return List.of(at);
  }

  private List<Integer> ofKind(BitSet kind) {
    return IntStream.range(0, layers.length).filter(i -> kind.get(layers[i])).boxed().toList();
  }

  /** A web, the web outside it and the bonds between. */
  private List<Integer> joint(int inner) {
    int outer = inner - 1;
    while (!alphabet.isWeb(layers[outer])) {
      outer--;
    }
    int first = outer;
    return IntStream.rangeClosed(outer, inner)
        .filter(i -> i == first || i == inner || alphabet.isBond(layers[i]))
        .boxed()
        .toList();
  }

  private void add(String reason, Integer... concerned) {
    found.add(new Objection("", reason, "", Arrays.asList(concerned)));
  }

  private String named(int i) {
    return alphabet.layer(layers[i]).toString();
  }

  private String after(int i) {
    return i == 0 ? "outermost" : "after " + named(i - 1);
  }

  private String choice(int[] offered) {
    List<String> names =
        Arrays.stream(offered).mapToObj(n -> alphabet.layer(n).toString()).toList();
    int last = names.size() - 1;
    if (names.size() > MOST_NAMED) {
      String first = String.join(", ", names.subList(0, MOST_NAMED));
      return first + " or " + (names.size() - MOST_NAMED) + " more";
    }
    return last == 0
        ? names.get(0)
        : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
  }
}
