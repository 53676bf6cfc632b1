package plyworth.workbench.engine.graph;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;

/**
 * How many candidates use each option.
 *
 * <p>A candidate uses an option when its layers can be spelled with that option at that position,
 * so the candidates counted are those paths of the graph that the positions still spell when the
 * option is the only one left at its position.
 */
final class OptionCounts {

  private final CandidateGraph graph;
  private final List<Position> positions;
  private final LayerAlphabet alphabet;

  OptionCounts(CandidateGraph graph, List<Position> positions, LayerAlphabet alphabet) {
    this.graph = graph;
    this.positions = positions;
    this.alphabet = alphabet;
  }

  /** The counts, position by option. */
  List<List<BigInteger>> all() {
    List<List<BigInteger>> all = new ArrayList<>();
    for (int p = 0; p < positions.size(); p++) {
      List<BigInteger> counts = new ArrayList<>();
      for (Option option : positions.get(p).options()) {
        List<Position> narrowed = new ArrayList<>(positions);
        narrowed.set(p, new Position(positions.get(p).title(), List.of(option)));
        counts.add(new Walk(new PositionAutomaton(narrowed, alphabet)).from(graph.outside(), 0));
      }
      all.add(List.copyOf(counts));
    }
    return List.copyOf(all);
  }

  /** Counts the paths of the graph that an automaton of fewer options spells. */
  private final class Walk {
    private final PositionAutomaton spelled;
    private final Map<Long, BigInteger> counted = new HashMap<>();

    Walk(PositionAutomaton spelled) {
      this.spelled = spelled;
    }

    BigInteger from(CandidateNode node, int state) {
      long key = (long) node.number() << Integer.SIZE | state;
      BigInteger known = counted.get(key);
      if (known == null) {
        known = node.ends() && spelled.ends(state) ? BigInteger.ONE : BigInteger.ZERO;
        for (CandidateNode next : graph.successors(node)) {
          int step = spelled.next(state, next.layerNumber());
          if (step != PositionAutomaton.NONE) {
            known = known.add(from(next, step));
          }
        }
        counted.put(key, known);
      }
      return known;
    }
  }
}
