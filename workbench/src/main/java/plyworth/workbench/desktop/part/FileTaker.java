package plyworth.workbench.desktop.part;

import java.nio.file.Path;

/** A window that opens a file that was dropped onto it. */
public interface FileTaker {

  /** Opens it in place of what is on screen, unless that would lose something. */
  void openAfterAsking(Path file);
}
