package plyworth.workbench.command;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Search;
import plyworth.workbench.robustness.LeaderStability;
import plyworth.workbench.robustness.SecondOpinion;
import plyworth.workbench.robustness.Stakeholders;
import plyworth.workbench.robustness.WeightInterval;

/** Says how far the ranking of a study can be trusted. */
@Command(
    name = "robustness",
    description = {
      "Says how far a ranking can be trusted: how much each weight may move before another"
          + " candidate leads, and what the weightings of the study make of each other's choices."
    })
final class RobustnessCommand implements Callable<Integer> {

  private static final int MOST = 100;

  /** How many of the best the second opinions order. */
  private static final int COMPARED = 50;

  @ParentCommand private Plyworth program;

  @Mixin private StudyArgument study;

  @Option(
      names = "--top",
      paramLabel = "N",
      defaultValue = "10",
      description =
          "How many of the best of each weighting to compare, up to 100; ${DEFAULT-VALUE} by"
              + " default.")
  private int top;

  @Mixin private OutputFormat format;

  /** What was found out about a ranking. */
  record Robustness(
      Ranked ranked,
      List<WeightInterval> intervals,
      Stakeholders stakeholders,
      SecondOpinion second) {}

  @Override
  public Integer call() {
    if (top < 1 || top > MOST) {
      throw new WrongInput("--top is " + top + "; it must be 1 to " + MOST);
    }
    StudyRun run = StudyRun.of(program, study);
    Ranked ranked =
        run.work(
            working ->
                run.ranked(working, 2, Optional.of(Search.TABLE), ProgressText.on(program.err())));
    StudyRun.warn(ranked, program.err());
    Robustness found =
        new Robustness(
            ranked,
            LeaderStability.of(ranked),
            Stakeholders.of(ranked, top),
            SecondOpinion.of(ranked, COMPARED));
    if (format.json()) {
      program.out().print(JsonPrint.text(RobustnessJson.of(found)));
    } else {
      RobustnessText.print(found, program.out());
    }
    program.out().flush();
    return Failures.DONE;
  }
}
