package plyworth.workbench.command.robustness;

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
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.OutputFormat;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.ProgressText;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.command.part.WrongInput;
import plyworth.workbench.command.print.Percent;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.robustness.Acceptability;
import plyworth.workbench.robustness.Contest;
import plyworth.workbench.robustness.Doubt;
import plyworth.workbench.robustness.LeaderStability;
import plyworth.workbench.robustness.Rivals;
import plyworth.workbench.robustness.SecondOpinion;
import plyworth.workbench.robustness.Stakeholders;
import plyworth.workbench.robustness.WeightAcceptability;
import plyworth.workbench.robustness.WeightInterval;

/** Says how far the ranking of a study can be trusted. */
@Command(
    name = "robustness",
    description = {
      "Says how far a ranking can be trusted: how much each weight may move before another"
          + " candidate leads, what the weightings of the study make of each other's choices, and how"
          + " often each candidate comes first while weights and inputs are uncertain."
    })
public final class RobustnessCommand implements Callable<Integer> {

  private static final int MOST = 100;

  /** How many of the best the second opinions order. */
  private static final int COMPARED = 50;

  private static final int MOST_DRAWS = 10_000;

  /** Limit of draws where neither it nor a precision is named. */
  private static final int USUAL_DRAWS = 1000;

  @ParentCommand private Program program;

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

  @Option(
      names = "--weights",
      paramLabel = "WHICH",
      defaultValue = "around",
      description =
          "What the draws take to be known of the weights: exact, around (near the weighting), order"
              + " or any; ${DEFAULT-VALUE} by default.")
  private Doubt doubt;

  @Option(
      names = "--draws",
      paramLabel = "N",
      description =
          "Most draws of weights and inputs, up to 10000; 1000 by default, 10000 where a precision is"
              + " named, 0 for none.")
  private Integer draws;

  @Option(
      names = "--precision",
      paramLabel = "PERCENT",
      description =
          "Draw until the standard error of every share of first places is down to this, 0.1 to 20 %%;"
              + " 3 %% by default.")
  private Percent precision;

  @Mixin private SeedOption seed;

  /**
   * What was found out about a ranking.
   *
   * @param top how many candidates to list
   * @param weightsAlone empty likewise, and when the weights are exact
   * @param acceptability empty when no draws were asked for, or nothing can be ranked
   */
  record Robustness(
      Ranked ranked,
      int top,
      List<WeightInterval> intervals,
      Stakeholders stakeholders,
      SecondOpinion second,
      Optional<WeightAcceptability> weightsAlone,
      Optional<Acceptability> acceptability) {}

  @Override
  public Integer call() {
    if (top < 1 || top > MOST) {
      throw new WrongInput("--top is " + top + "; it must be 1 to " + MOST);
    }
    if (limit() < 0 || limit() > MOST_DRAWS) {
      throw new WrongInput("--draws is " + draws + "; it must be 0 to " + MOST_DRAWS);
    }
    if (!(share() >= 0.001 && share() <= 0.2)) {
      throw new WrongInput("--precision is " + precision + "; it must be 0.1 to 20 %");
    }
    StudyRun run = StudyRun.of(program, study);
    Robustness found = run.work(working -> found(run, working));
    StudyRun.warn(found.ranked(), program.err());
    if (format.json()) {
      program.out().print(JsonPrint.text(RobustnessJson.of(found)));
    } else {
      RobustnessText.print(found, program.out());
    }
    program.out().flush();
    return Failures.DONE;
  }

  private int limit() {
    return draws != null ? draws : precision != null ? MOST_DRAWS : USUAL_DRAWS;
  }

  private double share() {
    return precision == null ? 0.03 : precision.share();
  }

  private Robustness found(StudyRun run, PluginCatalog working) {
    Ranked ranked =
        run.ranked(working, 2, Optional.of(Search.TABLE), ProgressText.on(program.err()));
    List<WeightInterval> intervals = LeaderStability.of(ranked);
    Stakeholders stakeholders = Stakeholders.of(ranked, top);
    List<Long> rivals = Rivals.of(ranked, intervals, stakeholders);
    boolean sampled = limit() > 0 && !intervals.isEmpty();
    Acceptability.Plan plan = new Acceptability.Plan(doubt, limit(), share(), seed.of(run.study()));
    return new Robustness(
        ranked,
        top,
        intervals,
        stakeholders,
        SecondOpinion.of(ranked, COMPARED),
        sampled && doubt != Doubt.EXACT
            ? Optional.of(weightsAlone(ranked, plan.seed()))
            : Optional.empty(),
        sampled ? Optional.of(Acceptability.of(ranked, rivals, plan)) : Optional.empty());
  }

  private WeightAcceptability weightsAlone(Ranked ranked, long seed) {
    return WeightAcceptability.of(Contest.of(ranked), doubt, seed, Progress.NONE);
  }
}
