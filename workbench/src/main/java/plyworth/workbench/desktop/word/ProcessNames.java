package plyworth.workbench.desktop.word;

import java.util.ResourceBundle;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;

/** Names of processes in the language in force; one that its user named keeps its name. */
public final class ProcessNames {

  private ProcessNames() {}

  /** What a process is called in the language in force. */
  public static String of(Process process) {
    String key = "process." + process.id();
    ResourceBundle words = Language.inForce().words();
    boolean standard =
        ProcessLibrary.standard()
            .find(process.id())
            .filter(s -> s.name().equals(process.name()))
            .isPresent();
    return standard && words.containsKey(key) ? words.getString(key) : process.name();
  }
}
