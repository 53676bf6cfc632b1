package plyworth.workbench.command.part;

import picocli.CommandLine.Option;

/** The option of commands that answer as a table for people or as JSON for programs. */
public final class OutputFormat {

  /** What it may be. */
  public enum Format {
    TABLE,
    JSON
  }

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "table",
      description = "table or json; ${DEFAULT-VALUE} by default.")
  private Format format;

  /** Whether JSON is wanted. */
  public boolean json() {
    return format == Format.JSON;
  }
}
