package plyworth.workbench.command.part;

/** What was typed is wrong; the message says what and what would be right. */
public final class WrongInput extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /** What is wrong, and what would be right. */
  public WrongInput(String message) {
    super(message);
  }
}
