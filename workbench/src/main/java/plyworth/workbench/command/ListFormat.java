package plyworth.workbench.command;

/** Ways to print a ranking. */
enum ListFormat {
  /** For people. */
  TABLE,
  /** For programs. */
  JSON,
  /** For spreadsheets. */
  CSV
}
