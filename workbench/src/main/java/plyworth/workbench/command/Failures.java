package plyworth.workbench.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import picocli.CommandLine;
import plyworth.shared.data.DataException;
import plyworth.workbench.engine.table.TableTooLargeException;

/** Turns what went wrong into a message and an exit code. */
final class Failures {

  static final int DONE = 0;
  static final int OUR_FAULT = 1;
  static final int WRONG_INPUT = 2;

  private Failures() {}

  static int onParameters(CommandLine.ParameterException e, String[] arguments) {
    PrintWriter err = e.getCommandLine().getErr();
    err.println("plyworth: " + e.getMessage());
    String name = e.getCommandLine().getCommandSpec().qualifiedName();
    err.println("Try: " + name + " --help");
    return WRONG_INPUT;
  }

  static int onExecution(Exception e, CommandLine commandLine, CommandLine.ParseResult parsed) {
    PrintWriter err = commandLine.getErr();
    if (isWrongInput(e)) {
      err.println("plyworth: " + message(e));
      return WRONG_INPUT;
    }
    err.println("plyworth: this is a fault of the program, not of your input: " + e);
    err.println("Please report it with the lines below and the study, if you may share it.");
    e.printStackTrace(err);
    return OUR_FAULT;
  }

  private static boolean isWrongInput(Exception e) {
    return e instanceof DataException
        || e instanceof IllegalArgumentException
        || e instanceof IOException
        || e instanceof TableTooLargeException;
  }

  private static String message(Exception e) {
    if (e instanceof NoSuchFileException) {
      return e.getMessage() + ": there is no such file. Check the path.";
    }
    if (e instanceof AccessDeniedException) {
      return e.getMessage() + ": the file may not be read or written. Check its permissions.";
    }
    return e.getMessage();
  }
}
