package plyworth.workbench.desktop.session;

import java.util.Map;
import java.util.OptionalLong;
import java.util.function.BooleanSupplier;
import java.util.stream.LongStream;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranges;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.ranking.Group;

/**
 * Everything shown of the selected structure.
 *
 * @param ranked the ranking it was worked out in
 * @param sheet its figures, findings and standing
 * @param rank its rank; empty when it is not ranked
 * @param explanations breakdown by plugin id
 * @param ranges range of every criterion, by full id; empty while they are worked out
 */
public record Detail(
    Ranked ranked,
    Sheet sheet,
    OptionalLong rank,
    Map<String, Explanation> explanations,
    Map<String, Range> ranges) {

  public static final int DRAWS = 100;

  /** What is known at once. */
  public static Detail of(Ranked ranked, Structure structure) {
    Sheet sheet = ranked.sheet(structure);
    return new Detail(
        ranked,
        sheet,
        rank(ranked, sheet),
        ranked.scored().compiled().prepared().bound().explain(structure),
        Map.of());
  }

  /** Which structure it is about. */
  public Structure structure() {
    return sheet.structure();
  }

  /** The same in a new ranking of the same scores. */
  Detail in(Ranked again) {
    Sheet moved = sheet.under(again.ranking().model());
    return new Detail(again, moved, rank(again, moved), explanations, ranges);
  }

  /** The same with ranges. */
  public Detail with(Map<String, Range> known) {
    return new Detail(ranked, sheet, rank, explanations, known);
  }

  private static OptionalLong rank(Ranked ranked, Sheet sheet) {
    if (sheet.path().isEmpty() || sheet.group() != Group.RANKED) {
      return OptionalLong.empty();
    }
    long path = sheet.path().getAsLong();
    OptionalLong listed =
        LongStream.range(0, ranked.best().size())
            .filter(i -> ranked.best().get((int) i).path() == path)
            .map(i -> i + 1)
            .findFirst();
    return listed.isPresent() ? listed : ranked.ranking().rankOf(path);
  }

  /** Works out the ranges, which takes its time. */
  public Map<String, Range> workOutRanges(BooleanSupplier cancelled) {
    return Ranges.of(
        ranked.scored().compiled().prepared(),
        sheet.structure(),
        DRAWS,
        ranked.study().seed(),
        cancelled);
  }

  /** Whether it belongs to these scores and this structure. */
  boolean isOf(Ranked now, Structure structure) {
    return ranked.scored() == now.scored() && sheet.structure().equals(structure);
  }
}
