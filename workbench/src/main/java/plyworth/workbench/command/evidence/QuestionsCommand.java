package plyworth.workbench.command.evidence;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.ListFormat;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.ProgressText;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.command.part.WrongInput;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.robustness.turn.OpenQuestions;
import plyworth.workbench.robustness.turn.QuestionList;

/** Lists what is worth measuring. */
@Command(
    name = "questions",
    description = {
      "Lists the figures of materials that are worth measuring: those that are unknown, and those"
          + " whose range could change who leads, the gravest first. As csv it is a list for a"
          + " laboratory to fill in; results --with reads it back."
    })
public final class QuestionsCommand implements Callable<Integer> {

  private static final int MOST = 1000;

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Option(
      names = "--top",
      paramLabel = "N",
      defaultValue = "20",
      description = "How many figures to list, 1 to 1000; ${DEFAULT-VALUE} by default.")
  private int top;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "table",
      description = "table, json or csv; ${DEFAULT-VALUE} by default.")
  private ListFormat format;

  /**
   * What is open.
   *
   * @param top how many figures to list
   */
  record Answer(Ranked ranked, OpenQuestions questions, int top) {}

  @Override
  public Integer call() {
    if (top < 1 || top > MOST) {
      throw new WrongInput("--top is " + top + "; it must be 1 to " + MOST);
    }
    StudyRun run = StudyRun.of(program, study);
    Answer answer = run.work(working -> answer(run, working));
    StudyRun.warn(answer.ranked(), program.err());
    switch (format) {
      case TABLE -> QuestionsText.print(answer, program.out());
      case JSON -> program.out().print(JsonPrint.text(QuestionsJson.of(answer)));
      case CSV -> program.out().print(QuestionList.text(answer.questions(), answer.top()));
    }
    program.out().flush();
    return Failures.DONE;
  }

  private Answer answer(StudyRun run, PluginCatalog working) {
    Ranked ranked = run.ranked(working, 1, Optional.empty(), ProgressText.on(program.err()));
    if (ranked.best().isEmpty() || !ranked.ranking().model().weighted()) {
      throw new WrongInput(
          ranked.best().isEmpty()
              ? "no candidate is ranked; the command rank says what keeps them out"
              : "no criterion counts under this weighting, so that nobody leads");
    }
    return new Answer(ranked, OpenQuestions.of(ranked, ProgressText.ofInputs(program.err())), top);
  }
}
