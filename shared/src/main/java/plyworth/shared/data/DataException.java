package plyworth.shared.data;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Something a user can mend in a file or an entry: what is wrong, where, and what would be right.
 */
public final class DataException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Place place;
  private final String problem;
  private final String remedy;

  /**
   * Says what is wrong.
   *
   * @param place where
   * @param problem what is wrong, without the place
   * @param remedy what would be right; may be empty
   */
  public DataException(Place place, String problem, String remedy) {
    super(place + ": " + problem + (remedy.isEmpty() ? "" : ". " + remedy));
    this.place = place;
    this.problem = problem;
    this.remedy = remedy;
  }

  /** Where; null only after the exception travelled as bytes. */
  public Place place() {
    return place;
  }

  /** What is wrong. */
  public String problem() {
    return problem;
  }

  /** What would be right; may be empty. */
  public String remedy() {
    return remedy;
  }

  /**
   * The message of each fault: this one's, then that of every fault found with it, which it
   * {@linkplain #getSuppressed() suppresses}.
   */
  public List<String> messages() {
    return Stream.concat(Stream.of(this), Arrays.stream(getSuppressed()))
        .map(Throwable::getMessage)
        .toList();
  }
}
