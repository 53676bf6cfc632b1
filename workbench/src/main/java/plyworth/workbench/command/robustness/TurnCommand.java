package plyworth.workbench.command.robustness;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.data.Spelling;
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
import plyworth.workbench.robustness.turn.Duel;
import plyworth.workbench.robustness.turn.Input;
import plyworth.workbench.robustness.turn.Inputs;
import plyworth.workbench.robustness.turn.Sweep;
import plyworth.workbench.robustness.turn.Turn;
import plyworth.workbench.robustness.turn.TurnSearch;
import plyworth.workbench.robustness.turn.Turns;
import plyworth.workbench.robustness.turn.World;

/** Says what would have to be true for one structure to overtake another. */
@Command(
    name = "turn",
    description = {
      "Says what would have to be true for a structure to overtake the leader: at which figure of one"
          + " input, all else as it is, the lead turns. Without --input, every input that both"
          + " depend on is tried alone, and those that turn it are listed, the smallest relative"
          + " change first."
    })
public final class TurnCommand implements Callable<Integer> {

  private static final String LEADER = "1";

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Parameters(
      index = "1",
      paramLabel = "CANDIDATE",
      description = "A rank (1, 2, …), \"baseline\", or a structure in layer notation.")
  private String candidate;

  @Option(
      names = "--against",
      paramLabel = "CANDIDATE",
      defaultValue = LEADER,
      description = "Whom it is to overtake, or to fall behind; the leader by default.")
  private String against;

  @Option(
      names = "--input",
      paramLabel = "NAME",
      description =
          "The one input to change: material/property, @process/figure, plugin/parameter,"
              + " weight:plugin/criterion or order/packs.")
  private String input;

  @Mixin private OutputFormat format;

  /**
   * What was found out.
   *
   * @param ranked the study
   * @param duel the one that leads at present, before the other
   * @param lead by how much it leads
   * @param turns what the input that was named does; empty when none was
   * @param there who leads among all candidates just beyond its nearest turn
   * @param sweep what every input does; empty when one was named
   */
  record Answer(
      Ranked ranked,
      Duel duel,
      double lead,
      Optional<Turns> turns,
      Optional<Ranked> there,
      Optional<Sweep> sweep) {}

  @Override
  public Integer call() {
    StudyRun run = StudyRun.of(program, study);
    NamedCandidate challenger = NamedCandidate.read(candidate, run.study());
    NamedCandidate defender = NamedCandidate.read(against, run.study());
    Answer answer = run.work(working -> answer(run, working, defender, challenger));
    StudyRun.warn(answer.ranked(), program.err());
    if (format.json()) {
      program.out().print(JsonPrint.text(TurnJson.of(answer)));
    } else {
      TurnText.print(answer, program.out());
    }
    program.out().flush();
    return Failures.DONE;
  }

  private Answer answer(
      StudyRun run, PluginCatalog working, NamedCandidate defender, NamedCandidate challenger) {
    Ranked ranked =
        run.naming(List.of(defender, challenger), working, ProgressText.on(program.err()));
    PluginCatalog catalog = ranked.scored().compiled().prepared().catalog();
    Duel named = new Duel(catalog, defender.in(ranked), challenger.in(ranked));
    World world = World.of(ranked.study(), ranked.ranking().model());
    double lead = named.in(world).lead();
    refuseWhatCannotTurn(ranked, named, lead);
    Duel duel = lead < 0 ? named.turned() : named;
    List<Input> inputs = Inputs.of(duel, world);
    if (input == null) {
      Sweep sweep = Sweep.of(duel, world, inputs, ProgressText.ofInputs(program.err()));
      return new Answer(
          ranked, duel, Math.abs(lead), Optional.empty(), Optional.empty(), Optional.of(sweep));
    }
    Input moved = named(inputs);
    if (!TurnSearch.movable(moved)) {
      throw new WrongInput(
          moved.name() + " is " + moved.present() + " and has no bounds between which to move it");
    }
    Turns turns = TurnSearch.of(duel, world, moved, false);
    return new Answer(
        ranked,
        duel,
        Math.abs(lead),
        Optional.of(turns),
        turns.nearest().map(turn -> beyond(ranked, world, turns, turn)),
        Optional.empty());
  }

  private static void refuseWhatCannotTurn(Ranked ranked, Duel named, double lead) {
    if (named.one().equals(named.other())) {
      throw new WrongInput("both are the same structure; name another with --against");
    }
    if (!ranked.ranking().model().weighted()) {
      throw new WrongInput("no criterion counts under this weighting, so that nobody leads");
    }
    if (Double.isNaN(lead)) {
      throw new WrongInput(
          "neither of the two is ranked; why says what keeps a structure out of the ranking");
    }
  }

  private Input named(List<Input> inputs) {
    return inputs.stream()
        .filter(found -> found.name().equals(input))
        .findFirst()
        .orElseThrow(
            () ->
                new WrongInput(
                    "--input: neither structure depends on \""
                        + input
                        + "\". "
                        + Spelling.nearest(input, inputs.stream().map(Input::name).toList())
                            .map(near -> "Did you mean \"" + near + "\"?")
                            .orElse("Without --input all inputs are tried and named.")));
  }

  /** All candidates, ranked again just beyond a turn. */
  private Ranked beyond(Ranked ranked, World world, Turns turns, Turn turn) {
    World there = turns.input().in(world, turns.beyond(turn));
    return Ranked.of(
        ranked.scored().compiled().in(there.study(), there.draw()),
        1,
        Optional.empty(),
        ProgressText.on(program.err()));
  }
}
