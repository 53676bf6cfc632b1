package plyworth.workbench.desktop;

import plyworth.workbench.analysis.InputName;
import plyworth.workbench.analysis.Ranked;

/** Names of uncertain inputs in the language in force. */
final class InputWords {

  private InputWords() {}

  static InputName of(Ranked ranked, String id) {
    return InputName.of(ranked, id, Language.inForce().locale(), MaterialNames::of);
  }
}
