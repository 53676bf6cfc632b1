package plyworth.workbench.command.part;

/** Ways to print a ranking. */
public enum ListFormat {
  /** For people. */
  TABLE,
  /** For programs. */
  JSON,
  /** For spreadsheets. */
  CSV
}
