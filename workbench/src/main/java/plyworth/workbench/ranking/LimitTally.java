package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.study.Limit;
import plyworth.workbench.engine.table.CandidateTable;

/**
 * What one limit does to the candidates of a table that nothing blocks.
 *
 * @param limit the limit
 * @param broken how many do not keep to it, whatever other limits say
 * @param unknown how many cannot be judged by it, since their figure is unknown
 * @param open how many have a figure of which only bounds are known, with the limit between them
 * @param dropped how many fewer are ranked because of it: those that keep to every other limit
 */
public record LimitTally(Limit limit, long broken, long unknown, long open, long dropped) {

  /**
   * The tally of every limit of a model; of a limit whose criterion has no column in the table
   * there is none.
   *
   * @param exact asked for the few candidates whose figure lies within one float step of a limit
   */
  public static List<LimitTally> of(CandidateTable table, ValueModel model, ExactScores exact) {
    List<Limit> counted = model.limits().stream().filter(l -> held(table, model, l)).toList();
    long ranked = counts(table, model, counted, exact).ranked();
    List<LimitTally> tallies = new ArrayList<>();
    for (Limit limit : counted) {
      List<Limit> others = new ArrayList<>(counted);
      others.remove(limit);
      GroupCounts alone = counts(table, model, List.of(limit), exact);
      tallies.add(
          new LimitTally(
              limit,
              alone.excluded(),
              alone.cannotBeJudged(),
              alone.open(),
              counts(table, model, others, exact).ranked() - ranked));
    }
    return tallies;
  }

  private static GroupCounts counts(
      CandidateTable table, ValueModel model, List<Limit> limits, ExactScores exact) {
    ValueModel limited = new ValueModel(model.criteria(), limits, model.lost(), model.moot());
    return Groups.of(table, limited, exact).counts();
  }

  private static boolean held(CandidateTable table, ValueModel model, Limit limit) {
    return table.chunks() == 0
        || table.chunk(0).has(model.indexOf(limit.criterion()).orElseThrow());
  }
}
