package plyworth.workbench.desktop.part;

import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.function.BooleanSupplier;
import javax.swing.JDialog;
import javax.swing.JOptionPane;
import plyworth.workbench.desktop.word.Words;

/** Leaves a dialog without taking anything over; asks first when something was typed. */
public final class Leaving {

  private final JDialog dialog;
  private final BooleanSupplier typed;
  private final Command command;

  /**
   * Lets a dialog be left by a button and by its frame.
   *
   * @param typed whether something would be lost
   */
  public Leaving(JDialog dialog, BooleanSupplier typed) {
    this.dialog = dialog;
    this.typed = typed;
    command = Command.of("written.leave", null, this::leave);
    dialog.setDefaultCloseOperation(JDialog.DO_NOTHING_ON_CLOSE);
    dialog.addWindowListener(
        new WindowAdapter() {
          @Override
          public void windowClosing(WindowEvent event) {
            leave();
          }
        });
  }

  /** Leaves, for the button and for Escape. */
  public Command command() {
    return command;
  }

  private void leave() {
    if (!typed.getAsBoolean() || givenUp(dialog)) {
      dialog.dispose();
    }
  }

  /** Asks whether what was typed is given up. */
  public static boolean givenUp(JDialog dialog) {
    return JOptionPane.showConfirmDialog(
            dialog,
            Words.of("written.lost"),
            Words.of("written.lost.title"),
            JOptionPane.YES_NO_OPTION)
        == JOptionPane.YES_OPTION;
  }
}
