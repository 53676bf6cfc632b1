package plyworth.workbench.command.robustness;

import picocli.CommandLine.Option;
import plyworth.shared.study.Study;

/** The option of commands that draw at random. */
final class SeedOption {

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "The draws repeat with the seed, a whole number; by default that of the study.")
  private Integer seed;

  /** The seed that was asked for, or that of the study. */
  int of(Study study) {
    return seed == null ? study.seed() : seed;
  }
}
