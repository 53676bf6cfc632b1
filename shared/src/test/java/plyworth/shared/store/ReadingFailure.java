package plyworth.shared.store;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import plyworth.shared.data.DataException;

/** What reading a spoilt study says. */
final class ReadingFailure {

  private ReadingFailure() {}

  /** The exception; null when the text is read without complaint. */
  static DataException of(String text) {
    return catchThrowableOfType(
        DataException.class, () -> StudyFile.read(text, "sugar.study.json"));
  }
}
