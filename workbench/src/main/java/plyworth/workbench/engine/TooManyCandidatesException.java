package plyworth.workbench.engine;

/** A study leads to more candidates than can be counted or held. */
public final class TooManyCandidatesException extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * Says what there is too much of, and what to do.
   *
   * @param message a sentence for people
   */
  public TooManyCandidatesException(String message) {
    super(message);
  }
}
