package plyworth.workbench.desktop.brief;

/** What somebody typed cannot be taken; the message says what would be right. */
final class WrongEntry extends RuntimeException {

  private static final long serialVersionUID = 1L;

  WrongEntry(String message) {
    super(message);
  }
}
