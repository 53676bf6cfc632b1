package plyworth.workbench.command.part;

import java.io.PrintWriter;
import plyworth.workbench.host.PluginCatalog;

/** What a command needs of the program that it was started by. */
public interface Program {

  /** The plugins at hand. */
  PluginCatalog catalog();

  /** Where the answer goes. */
  PrintWriter out();

  /** Where progress, warnings and messages go. */
  PrintWriter err();
}
