package plyworth.workbench.command.robustness;

import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.data.Spelling;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.command.candidate.SheetText;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.NamedCandidate;
import plyworth.workbench.command.part.OutputFormat;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.ProgressText;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.command.part.WrongInput;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.ranking.Weighed;
import plyworth.workbench.robustness.Sensitivity;

/** Says which uncertain inputs make a figure uncertain. */
@Command(
    name = "sensitivity",
    description = {
      "Says which uncertain inputs make a figure of a structure uncertain: the share of its variance"
          + " that each explains alone, and together with the others (Sobol indices)."
    })
public final class SensitivityCommand implements Callable<Integer> {

  private static final int FEWEST = 16;

  private static final int MOST = 1 << 16;

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Parameters(
      index = "1",
      paramLabel = "CANDIDATE",
      description = "A rank (1, 2, …), \"baseline\", or a structure in layer notation.")
  private String candidate;

  @Option(
      names = "--criterion",
      paramLabel = "PLUGIN/CRITERION",
      description = "The criterion to look into; by default the value under the weighting.")
  private String criterion;

  @Option(
      names = "--samples",
      paramLabel = "N",
      defaultValue = "256",
      description =
          "Base points, up to 65536, rounded up to a power of two; ${DEFAULT-VALUE} by default. With"
              + " n uncertain inputs the structure is scored N (n + 2) times.")
  private int samples;

  @Mixin private SeedOption seed;

  @Mixin private OutputFormat format;

  /**
   * What was found out about a figure.
   *
   * @param criterion place of the criterion in the value model; empty for the value
   */
  record Found(Ranked ranked, Sheet sheet, OptionalInt criterion, Sensitivity sensitivity) {

    /** The typical figure. */
    double typical() {
      return criterion.isPresent()
          ? sheet.outcomes().get(criterion.getAsInt()).orUnknown()
          : sheet.valuation().value();
    }
  }

  @Override
  public Integer call() {
    if (samples < FEWEST || samples > MOST) {
      throw new WrongInput("--samples is " + samples + "; it must be " + FEWEST + " to " + MOST);
    }
    StudyRun run = StudyRun.of(program, study);
    NamedCandidate named = NamedCandidate.read(candidate, run.study());
    Found found = run.work(working -> found(run, working, named));
    StudyRun.warn(found.ranked(), program.err());
    if (format.json()) {
      program.out().print(JsonPrint.text(SensitivityJson.of(found)));
    } else {
      SensitivityText.print(found, program.out());
    }
    program.out().flush();
    return Failures.DONE;
  }

  private Found found(StudyRun run, PluginCatalog working, NamedCandidate named) {
    Ranked ranked = run.naming(List.of(named), working, ProgressText.on(program.err()));
    Sheet sheet = ranked.sheet(named.in(ranked));
    OptionalInt place = criterion == null ? OptionalInt.empty() : place(ranked, sheet);
    if (place.isEmpty() && !ranked.ranking().model().weighted()) {
      throw new WrongInput(
          "no criterion of the weighting \""
              + ranked.study().weighting()
              + "\" counts, so every value is 0; name a criterion with --criterion");
    }
    Sensitivity.Plan plan = new Sensitivity.Plan(powerOfTwo(samples), seed.of(run.study()));
    return new Found(
        ranked,
        sheet,
        place,
        Sensitivity.of(
            ranked.scored().compiled().prepared(),
            ranked.ranking().model(),
            sheet.structure(),
            place,
            plan,
            ProgressText.ofWorlds(program.err())));
  }

  /** The same, or the next power of two above. */
  private static int powerOfTwo(int number) {
    int below = Integer.highestOneBit(number);
    return below == number ? number : 2 * below;
  }

  /** The place of the criterion, which must have a figure. */
  private OptionalInt place(Ranked ranked, Sheet sheet) {
    List<Weighed> criteria = ranked.ranking().model().criteria();
    List<String> known = criteria.stream().map(weighed -> weighed.criterion().id()).toList();
    int place = known.indexOf(criterion);
    if (place < 0) {
      throw new WrongInput(
          "--criterion: no plugin measures \""
              + criterion
              + "\". "
              + Spelling.suggestion(criterion, known));
    }
    if (Double.isNaN(sheet.outcomes().get(place).orUnknown())) {
      throw new WrongInput(
          "--criterion: this structure has no figure of "
              + criterion
              + SheetText.unknown(ranked, criteria.get(place), sheet.outcomes().get(place)));
    }
    return OptionalInt.of(place);
  }
}
