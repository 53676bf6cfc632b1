package plyworth.workbench.desktop.word;

import plyworth.workbench.analysis.InputName;
import plyworth.workbench.analysis.Ranked;

/** Names of uncertain inputs in the language in force. */
public final class InputWords {

  private InputWords() {}

  /** What an input is called, and what it is measured in. */
  public static InputName of(Ranked ranked, String id) {
    return InputName.of(ranked, id, Language.inForce().locale(), MaterialNames::of);
  }
}
