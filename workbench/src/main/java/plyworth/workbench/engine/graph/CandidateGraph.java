package plyworth.workbench.engine.graph;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.LongBinaryOperator;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Position;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.CompiledGraph;

/**
 * Every structure that the positions and rules of a study allow, as paths of one graph.
 *
 * <p>A path from the outside to a node where it may end is a candidate, and every candidate is one
 * path, in however many ways the options spell it. Successors stand in the order in which their
 * layers are first met in the study: position by position, option by option, outside first.
 */
public final class CandidateGraph {

  private final List<Position> positions;
  private final LayerAlphabet alphabet;
  private final Graph<CandidateNode, DefaultEdge> graph =
      new SimpleDirectedGraph<>(DefaultEdge.class);
  private final List<CandidateNode> nodes = new ArrayList<>();
  private final List<List<CandidateNode>> successors = new ArrayList<>();

  private CandidateGraph(List<Position> positions, LayerAlphabet alphabet) {
    this.positions = List.copyOf(positions);
    this.alphabet = alphabet;
  }

  /**
   * The graph of a study. Gives up when the thread is interrupted.
   *
   * @throws IllegalArgumentException when a material or process is not known, or when the study
   *     leads to more states than can be held
   * @throws CancellationException when the thread is interrupted
   */
  public static CandidateGraph of(
      List<Position> positions,
      List<NeighbourRule> rules,
      MaterialLibrary materials,
      ProcessLibrary processes) {
    return of(positions, rules, materials, processes, () -> Thread.currentThread().isInterrupted());
  }

  /**
   * The graph of a study.
   *
   * @param cancelled asked again and again while the graph is built; true gives up
   * @throws IllegalArgumentException when a material or process is not known, or when the study
   *     leads to more states than can be held
   * @throws CancellationException when cancelled
   */
  public static CandidateGraph of(
      List<Position> positions,
      List<NeighbourRule> rules,
      MaterialLibrary materials,
      ProcessLibrary processes,
      BooleanSupplier cancelled) {
    LayerAlphabet alphabet = new LayerAlphabet(materials, processes);
    alphabet.addAll(positions);
    GraphBuilder builder =
        new GraphBuilder(
            new PositionAutomaton(positions, alphabet),
            new RuleAutomaton(rules, alphabet),
            GraphBuilder.MOST_STATES,
            cancelled);
    CandidateGraph graph = new CandidateGraph(positions, alphabet);
    graph.fill(builder.build());
    return graph;
  }

  /** Turns the built nodes round, so that the outside comes first. */
  private void fill(List<GraphBuilder.Node> built) {
    int last = built.size() - 1;
    for (int i = 0; i <= last; i++) {
      GraphBuilder.Node node = built.get(i);
      BigInteger completions = node.ends() ? BigInteger.ONE : BigInteger.ZERO;
      for (int next : node.next()) {
        completions = completions.add(nodes.get(next).completions());
      }
      Layer layer = node.layer() == GraphBuilder.Node.OUTSIDE ? null : alphabet.layer(node.layer());
      nodes.add(new CandidateNode(last - i, node.layer(), layer, node.ends(), completions));
    }
    nodes.forEach(graph::addVertex);
    for (int i = 0; i <= last; i++) {
      for (int next : built.get(i).next()) {
        graph.addEdge(nodes.get(i), nodes.get(next));
      }
    }
    Collections.reverse(nodes);
    nodes.forEach(node -> successors.add(inStudyOrder(Graphs.successorListOf(graph, node))));
  }

  private static List<CandidateNode> inStudyOrder(List<CandidateNode> nodes) {
    return nodes.stream().sorted(Comparator.comparingInt(CandidateNode::layerNumber)).toList();
  }

  /** All nodes in topological order, the outside first. */
  public List<CandidateNode> nodes() {
    return Collections.unmodifiableList(nodes);
  }

  /** The node that stands for the outside of the pack. */
  public CandidateNode outside() {
    return nodes.get(0);
  }

  /** The nodes that may follow a node, in study order of their layers. */
  public List<CandidateNode> successors(CandidateNode node) {
    return successors.get(node.number());
  }

  /** The exact number of candidates. */
  public BigInteger count() {
    return outside().completions();
  }

  /**
   * The exact number of candidates that use each option: position by option. Where a layer list can
   * be spelled in several ways it counts once for every option that one of them uses.
   */
  public List<List<BigInteger>> optionCounts() {
    return new OptionCounts(this, positions, alphabet).all();
  }

  /**
   * How candidates run through the options, each counted once at every position.
   *
   * @param counted how many candidates of a run of path numbers, its end left out, are counted;
   *     path numbers are those of the {@linkplain #compile compiled} graph
   * @throws ArithmeticException when there are more than {@link Long#MAX_VALUE} candidates
   */
  public OptionFlows flows(LongBinaryOperator counted) {
    return flows(counted, OptionChoice.ANY);
  }

  /**
   * The same of those candidates alone that run through some options of a position.
   *
   * @param position index of the position
   * @param options indices of the options
   */
  public OptionFlows flows(LongBinaryOperator counted, int position, Set<Integer> options) {
    return flows(counted, OptionChoice.of(positions, position, options));
  }

  private OptionFlows flows(LongBinaryOperator counted, OptionChoice choice) {
    PositionAutomaton automaton = new PositionAutomaton(positions, alphabet);
    SpellingStates states = new SpellingStates(this, automaton, choice);
    return new FlowCount(this, positions, states, counted).run();
  }

  /** The slots in which the layer of each node may stand, by node number; none for the outside. */
  public List<List<Slot>> slots() {
    return new NodeSlots(this, new PositionAutomaton(positions, alphabet)).all();
  }

  /**
   * Candidates drawn at random, each with the same chance, with replacement.
   *
   * @param size how many
   * @param seed the same seed draws the same candidates
   * @throws IllegalArgumentException when there is no candidate to draw from
   */
  public List<Structure> sample(int size, long seed) {
    if (count().signum() == 0) {
      throw new IllegalArgumentException("there is no candidate to draw from");
    }
    Random random = new Random(seed);
    List<Structure> drawn = new ArrayList<>();
    while (drawn.size() < size) {
      BigInteger path = new BigInteger(count().bitLength(), random);
      if (path.compareTo(count()) < 0) {
        drawn.add(structure(path));
      }
    }
    return drawn;
  }

  /**
   * The flat form of this graph, with the same node numbers.
   *
   * @throws IllegalArgumentException when there are more than {@link Long#MAX_VALUE} candidates
   */
  public CompiledGraph compile() {
    List<Layer> layers = new ArrayList<>();
    int[] edgeStart = new int[nodes.size() + 1];
    int[] edgeTo = new int[graph.edgeSet().size()];
    boolean[] ends = new boolean[nodes.size()];
    for (CandidateNode node : nodes) {
      layers.add(node.layer());
      ends[node.number()] = node.ends();
      int edge = edgeStart[node.number()];
      for (CandidateNode next : successors(node)) {
        edgeTo[edge++] = next.number();
      }
      edgeStart[node.number() + 1] = edge;
    }
    return CompiledGraph.of(layers, edgeStart, edgeTo, ends);
  }

  /** The graph itself, for algorithms on graphs. */
  Graph<CandidateNode, DefaultEdge> graph() {
    return graph;
  }

  private Structure structure(BigInteger path) {
    List<Layer> layers = new ArrayList<>();
    CandidateNode node = outside();
    BigInteger rest = path;
    while (!node.ends() || rest.signum() > 0) {
      rest = node.ends() ? rest.subtract(BigInteger.ONE) : rest;
      for (CandidateNode next : successors(node)) {
        if (rest.compareTo(next.completions()) < 0) {
          node = next;
          break;
        }
        rest = rest.subtract(next.completions());
      }
      layers.add(node.layer());
    }
    return new Structure(layers);
  }
}
