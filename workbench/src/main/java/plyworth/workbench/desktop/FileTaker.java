package plyworth.workbench.desktop;

import java.nio.file.Path;

/** A window that opens a file that was dropped onto it. */
interface FileTaker {

  /** Opens it in place of what is on screen, unless that would lose something. */
  void openAfterAsking(Path file);
}
