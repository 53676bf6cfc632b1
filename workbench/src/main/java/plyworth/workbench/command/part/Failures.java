package plyworth.workbench.command.part;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Spelling;
import plyworth.workbench.engine.table.TableTooLargeException;

/** Turns what went wrong into a message and an exit code. */
public final class Failures {

  public static final int DONE = 0;
  static final int OUR_FAULT = 1;
  public static final int WRONG_INPUT = 2;

  private Failures() {}

  /** Says what is wrong with the arguments. */
  public static int onParameters(CommandLine.ParameterException e, String[] arguments) {
    PrintWriter err = e.getCommandLine().getErr();
    err.println("plyworth: " + sentence(e, arguments));
    err.println("Try: " + e.getCommandLine().getCommandSpec().qualifiedName() + " --help");
    return WRONG_INPUT;
  }

  private static String sentence(CommandLine.ParameterException e, String[] arguments) {
    if (!(e instanceof CommandLine.UnmatchedArgumentException unmatched)) {
      return e.getMessage().replace("Invalid value for option", "option").replace('\'', '"');
    }
    CommandLine command = e.getCommandLine();
    String first = unmatched.getUnmatched().get(0);
    if (first.startsWith("-")) {
      List<String> options =
          command.getCommandSpec().options().stream()
              .flatMap(o -> Arrays.stream(o.names()))
              .toList();
      return "there is no option \"" + first + "\". " + Spelling.suggestion(first, options);
    }
    return command.getParent() == null
        ? notACommand(command, arguments[0])
        : "\"" + first + "\" is one argument too many";
  }

  /** A message about a word that stands where a command is due. */
  public static String notACommand(CommandLine program, String word) {
    return "\""
        + word
        + "\" is neither a command nor a study file. "
        + Spelling.suggestion(word, program.getSubcommands().keySet());
  }

  /** Says why a command did not do its work. */
  public static int onExecution(
      Exception e, CommandLine commandLine, CommandLine.ParseResult parsed) {
    PrintWriter err = commandLine.getErr();
    if (e instanceof TableTooLargeException) {
      err.println("plyworth: " + e.getMessage() + " Or search without a table: --search bounded.");
      return WRONG_INPUT;
    }
    if (e instanceof DataException wrong) {
      return refuse(wrong, err);
    }
    if (e instanceof WrongInput) {
      err.println("plyworth: " + e.getMessage());
      return WRONG_INPUT;
    }
    return ourFault(e, err);
  }

  /** Says everything that is wrong with a file. */
  public static int refuse(DataException wrong, PrintWriter err) {
    wrong.messages().forEach(message -> err.println("plyworth: " + message));
    return WRONG_INPUT;
  }

  /** Says that the memory is used up. */
  public static int onMemoryUsedUp(PrintWriter err) {
    err.println(
        "plyworth: the memory is used up. Give more (PLYWORTH_JAVA_OPTIONS=-Xmx8g), or offer"
            + " fewer options in the positions of the study.");
    return OUR_FAULT;
  }

  private static int ourFault(Exception e, PrintWriter err) {
    err.println("plyworth: this is a fault of the program, not of your input: " + e);
    err.println("Please report it with the lines below and the study, if you may share it.");
    e.printStackTrace(err);
    return OUR_FAULT;
  }
}
