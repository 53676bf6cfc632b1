package plyworth.workbench.command;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import plyworth.workbench.analysis.Search;
import plyworth.workbench.command.candidate.CompareCommand;
import plyworth.workbench.command.candidate.ExplainCommand;
import plyworth.workbench.command.candidate.ScoreCommand;
import plyworth.workbench.command.candidate.WhyCommand;
import plyworth.workbench.command.evidence.MaterialsCommand;
import plyworth.workbench.command.evidence.QuestionsCommand;
import plyworth.workbench.command.evidence.ResultsCommand;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.ListFormat;
import plyworth.workbench.command.part.OutputFormat;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.WrongInput;
import plyworth.workbench.command.print.Percent;
import plyworth.workbench.command.ranking.Listing;
import plyworth.workbench.command.ranking.RankCommand;
import plyworth.workbench.command.robustness.RobustnessCommand;
import plyworth.workbench.command.robustness.SensitivityCommand;
import plyworth.workbench.command.robustness.TurnCommand;
import plyworth.workbench.command.stock.CheckCommand;
import plyworth.workbench.command.stock.PluginsCommand;
import plyworth.workbench.command.stock.ProductsCommand;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.robustness.Doubt;

/** The program on the command line; without a command it opens the window. */
@Command(
    name = "plyworth",
    versionProvider = Plyworth.Version.class,
    synopsisSubcommandLabel = "[COMMAND]",
    description = "Trade-off studies of flexible-packaging structures.",
    footer = {
      "",
      "Without a command the window opens, on STUDY or on an example.",
      "Results are screening estimates; the tests that settle a figure are named beside it."
    },
    subcommands = {
      RankCommand.class,
      ScoreCommand.class,
      ExplainCommand.class,
      CompareCommand.class,
      WhyCommand.class,
      RobustnessCommand.class,
      SensitivityCommand.class,
      TurnCommand.class,
      QuestionsCommand.class,
      ResultsCommand.class,
      MaterialsCommand.class,
      CheckCommand.class,
      PluginsCommand.class,
      ProductsCommand.class
    })
public final class Plyworth implements Program, Callable<Integer> {

  /** Opens the window. */
  @FunctionalInterface
  public interface Opener {
    /**
     * Opens the window on a study.
     *
     * @param study file of the study
     * @return exit code
     */
    int open(Path study, PluginCatalog catalog);
  }

  @Spec private CommandSpec spec;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = CommandLine.ScopeType.INHERIT,
      description = "Show this help and exit.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Show the version and exit.")
  private boolean version;

  @Option(
      names = "--plugins",
      paramLabel = "FOLDER",
      scope = CommandLine.ScopeType.INHERIT,
      description = "Folder the plugins are loaded from; by default the program's own.")
  private Path pluginFolder;

  @Parameters(
      arity = "0..1",
      paramLabel = "STUDY",
      description = "Study file to open in the window.")
  private Path study;

  private final Workplace workplace;
  private final Opener opener;

  private Plyworth(Workplace workplace, Opener opener) {
    this.workplace = workplace;
    this.opener = opener;
  }

  /**
   * Runs the program.
   *
   * @return exit code: 0 done, 1 a fault of ours, 2 the input is wrong
   */
  public static int run(
      Workplace workplace, Opener opener, PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine program =
        new CommandLine(new Plyworth(workplace, opener))
            .setOut(out)
            .setErr(err)
            .setUsageHelpAutoWidth(true)
            .registerConverter(int.class, new Hooks.Whole())
            .registerConverter(Integer.class, new Hooks.Whole())
            .registerConverter(Percent.class, new Hooks.Share())
            .registerConverter(ListFormat.class, new Hooks.OneOf<>(ListFormat.class))
            .registerConverter(Listing.class, new Hooks.OneOf<>(Listing.class))
            .registerConverter(Search.class, new Hooks.OneOf<>(Search.class))
            .registerConverter(
                OutputFormat.Format.class, new Hooks.OneOf<>(OutputFormat.Format.class))
            .registerConverter(Doubt.class, new Hooks.OneOf<>(Doubt.class))
            .setExecutionExceptionHandler(new Hooks.WrongWork())
            .setParameterExceptionHandler(new Hooks.WrongArguments());
    try {
      return program.execute(arguments);
    } catch (OutOfMemoryError e) {
      return Failures.onMemoryUsedUp(err);
    }
  }

  @Override
  public Integer call() {
    if (study == null && !workplace.hasExample()) {
      throw new WrongInput(
          "the example " + workplace.example() + " is missing. Name a study file.");
    }
    if (study != null && !Files.exists(study)) {
      throw new WrongInput(Failures.notACommand(spec.commandLine(), study.toString()));
    }
    return opener.open(study == null ? workplace.example() : study, catalog());
  }

  @Override
  public PluginCatalog catalog() {
    if (pluginFolder != null && !Files.isDirectory(pluginFolder)) {
      throw new WrongInput("--plugins: there is no folder " + pluginFolder);
    }
    return PluginCatalog.load(pluginFolder == null ? workplace.plugins() : pluginFolder);
  }

  @Override
  public PrintWriter out() {
    return spec.commandLine().getOut();
  }

  @Override
  public PrintWriter err() {
    return spec.commandLine().getErr();
  }

  /** Version from the jar. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      String version = Plyworth.class.getPackage().getImplementationVersion();
      return new String[] {"plyworth " + (version == null ? "(not packaged)" : version)};
    }
  }
}
