package plyworth.workbench.robustness.turn;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.data.DataException;
import plyworth.shared.quantity.Range;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.PropertyBounds;
import plyworth.workbench.analysis.RefusedLine;
import plyworth.workbench.host.PluginCatalog;

/**
 * What a list that a laboratory filled in would change in a study.
 *
 * @param changes figures that become others, in the order of the list
 * @param refused lines that are not taken over
 * @param study the study with all readings that are taken over
 */
public record AnswerReview(List<Change> changes, List<RefusedLine> refused, Study study) {

  /**
   * A reading and what it does.
   *
   * @param before the figure that the study reckons with now; unknown when there is none
   * @param after the figure after all readings of the list
   */
  public record Change(MaterialResult result, Range before, Range after) {}

  /** Copies the lists. */
  public AnswerReview {
    changes = List.copyOf(changes);
    refused = List.copyOf(refused);
  }

  /**
   * Reads a list.
   *
   * @param source name of its file, for messages
   * @throws DataException when it is no such list
   */
  public static AnswerReview read(String text, String source, Study study, PluginCatalog catalog) {
    QuestionList.Filled filled = QuestionList.read(text, source, study);
    List<RefusedLine> refused = new ArrayList<>();
    filled.refused().forEach(line -> refused.add(RefusedLine.of(line.what(), line.wrong())));
    List<MaterialResult> taken = new ArrayList<>();
    for (QuestionList.Answer answer : filled.answers()) {
      MaterialResult result = answer.result();
      PropertyBounds.check(study.with(study.results().and(List.of(result))), catalog).stream()
          .findFirst()
          .ifPresentOrElse(
              wrong ->
                  refused.add(
                      new RefusedLine(
                          answer.line(),
                          result.material() + ", " + result.property(),
                          wrong.problem() + ". " + wrong.remedy())),
              () -> taken.add(result));
    }
    Study with = study.with(study.results().and(taken));
    return new AnswerReview(
        taken.stream().map(result -> change(result, study, with)).toList(), refused, with);
  }

  private static Change change(MaterialResult result, Study before, Study after) {
    return new Change(result, figure(result, before), figure(result, after));
  }

  private static Range figure(MaterialResult result, Study study) {
    return study
        .materialsAtHand()
        .require(result.material())
        .figure(result.property(), result.at());
  }
}
