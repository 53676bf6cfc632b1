package plyworth.workbench.command.candidate;

import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Inquiry;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.NamedCandidate;
import plyworth.workbench.command.part.OutputFormat;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.ProgressText;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.command.part.WrongInput;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.ranking.Group;

/** Says why a structure is not offered, or not ranked, and what would let it in. */
@Command(
    name = "why",
    description = {
      "Says why a structure is not offered, or not ranked: which position, neighbour rule, block or"
          + " limit keeps it out, the smallest changes of the study that would let it in, and the"
          + " candidates next to it."
    })
public final class WhyCommand implements Callable<Integer> {

  private static final int MOST = 50;

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Option(
      names = "--structure",
      required = true,
      paramLabel = "LAYERS",
      description =
          "The layers, outside first, joined by \" / \", as score takes them; or baseline, which is"
              + " today's.")
  private String structure;

  @Option(
      names = "--nearest",
      paramLabel = "N",
      defaultValue = "3",
      description =
          "How many of the nearest candidates to show, up to 50; ${DEFAULT-VALUE} by" + " default.")
  private int nearest;

  @Mixin private OutputFormat format;

  /**
   * What was found out.
   *
   * @param rank its rank among all candidates; empty when it has none, or they were not counted
   */
  record Answer(Ranked ranked, Inquiry inquiry, OptionalLong rank) {}

  @Override
  public Integer call() {
    if (nearest < 0 || nearest > MOST) {
      throw new WrongInput("--nearest is " + nearest + "; it must be 0 to " + MOST);
    }
    StudyRun run = StudyRun.of(program, study);
    Structure asked = NamedCandidate.structureOrToday("--structure", structure, run.study());
    Answer answer = run.work(working -> answer(run, working, asked));
    StudyRun.warn(answer.ranked(), program.err());
    if (format.json()) {
      program.out().print(JsonPrint.text(WhyJson.of(answer)));
    } else {
      WhyText.print(answer, program.out());
    }
    program.out().flush();
    return Failures.DONE;
  }

  /** Only a candidate that is ranked has a rank, and only then are all candidates scored. */
  private Answer answer(StudyRun run, PluginCatalog working, Structure asked) {
    Ranked ready = run.ready(working);
    Inquiry inquiry = Inquiry.of(ready, asked, nearest);
    if (!inquiry.sheet().onOffer() || inquiry.sheet().group() != Group.RANKED) {
      return new Answer(ready, inquiry, OptionalLong.empty());
    }
    Ranked all = run.ranked(working, 1, Optional.empty(), ProgressText.on(program.err()));
    long path = inquiry.sheet().path().getAsLong();
    return new Answer(
        all,
        inquiry,
        all.ranking().isCounted() ? all.ranking().rankOf(path) : OptionalLong.empty());
  }
}
