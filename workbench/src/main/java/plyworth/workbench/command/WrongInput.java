package plyworth.workbench.command;

/** What was typed is wrong; the message says what and what would be right. */
final class WrongInput extends RuntimeException {

  private static final long serialVersionUID = 1L;

  WrongInput(String message) {
    super(message);
  }
}
