package plyworth.workbench.command;

import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.Words;
import plyworth.workbench.command.print.Percent;

/**
 * What the command-line library calls back. Classes rather than lambdas: its interfaces are of an
 * old class format, and a virtual machine of Java 17 crashes when it archives lambdas of such.
 */
final class Hooks {

  private Hooks() {}

  /** A whole number. */
  static final class Whole implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String text) {
      return Words.whole(text);
    }
  }

  /** A share in per cent. */
  static final class Share implements ITypeConverter<Percent> {
    @Override
    public Percent convert(String text) {
      return Percent.read(text);
    }
  }

  /**
   * One of a few words.
   *
   * @param type whose constants they are
   */
  record OneOf<E extends Enum<E>>(Class<E> type) implements ITypeConverter<E> {
    @Override
    public E convert(String text) {
      return Words.choice(text, type);
    }
  }

  /** What is wrong with the arguments. */
  static final class WrongArguments implements IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException e, String[] arguments) {
      return Failures.onParameters(e, arguments);
    }
  }

  /** Why a command did not do its work. */
  static final class WrongWork implements IExecutionExceptionHandler {
    @Override
    public int handleExecutionException(Exception e, CommandLine command, ParseResult parsed) {
      return Failures.onExecution(e, command, parsed);
    }
  }
}
