package plyworth.workbench.engine.graph;

import java.util.List;
import java.util.function.LongBinaryOperator;
import plyworth.shared.structure.Position;

/**
 * Counts {@link OptionFlows}.
 *
 * <p>Candidates that share their outer layers have neighbouring path numbers, so the count walks
 * down the graph only where some of a run of numbers count and others do not. Where all do, the run
 * is handed on as a whole, and each state passes on how often it was entered: work in the size of
 * the graph, not in the number of candidates.
 */
final class FlowCount {

  private final CandidateGraph graph;
  private final SpellingStates states;
  private final LongBinaryOperator counted;
  private final OptionFlows flows;

  FlowCount(
      CandidateGraph graph,
      List<Position> positions,
      SpellingStates states,
      LongBinaryOperator counted) {
    this.graph = graph;
    this.states = states;
    this.counted = counted;
    flows = new OptionFlows(positions);
  }

  OptionFlows run() {
    if (graph.count().signum() > 0) {
      walk(states.outside(), 0);
      graph.nodes().forEach(node -> states.at(node).forEach(this::handOn));
    }
    return flows;
  }

  /** Counts the candidates from a state on, by the slot their counting spelling has there. */
  private long[] walk(SpellingState state, long path) {
    long size = state.node().completions().longValueExact();
    long count = counted.applyAsLong(path, path + size);
    if (count == size) {
      state.entered++;
      return completions(state);
    }
    return count == 0 ? new long[state.size()] : walkOn(state, path);
  }

  private long[] walkOn(SpellingState state, long path) {
    long[] found = new long[state.size()];
    long next = path;
    if (state.node().ends()) {
      int ending = states.ending(state);
      if (ending >= 0 && counted.applyAsLong(path, path + 1) == 1) {
        found[ending]++;
        flows.end(states.slot(state, ending), 1);
      }
      next++;
    }
    for (SpellingState.Step step : states.steps(state)) {
      take(state, step, walk(step.to(), next), 1, found);
      next += step.to().node().completions().longValueExact();
    }
    return found;
  }

  /** Adds what comes back from a step, to the flows and to the state it starts from. */
  private void take(
      SpellingState state, SpellingState.Step step, long[] back, long times, long[] found) {
    for (int i = 0; i < back.length; i++) {
      if (back[i] > 0) {
        int before = step.before()[i];
        found[before] += back[i];
        Slot to = states.slot(step.to(), i);
        if (to.layer() == 0) {
          flows.add(states.slot(state, before), to, times * back[i]);
        }
      }
    }
  }

  private long[] completions(SpellingState state) {
    if (state.completions == null) {
      long[] found = new long[state.size()];
      int ending = states.ending(state);
      if (ending >= 0) {
        found[ending]++;
      }
      for (SpellingState.Step step : states.steps(state)) {
        long[] back = completions(step.to());
        for (int i = 0; i < back.length; i++) {
          found[step.before()[i]] += back[i];
        }
      }
      state.completions = found;
    }
    return state.completions;
  }

  private void handOn(SpellingState state) {
    if (state.entered == 0) {
      return;
    }
    int ending = states.ending(state);
    if (ending >= 0) {
      flows.end(states.slot(state, ending), state.entered);
    }
    long[] ignored = new long[state.size()];
    for (SpellingState.Step step : states.steps(state)) {
      take(state, step, completions(step.to()), state.entered, ignored);
      step.to().entered += state.entered;
    }
  }
}
