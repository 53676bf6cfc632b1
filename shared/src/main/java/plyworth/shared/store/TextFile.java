package plyworth.shared.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Place;

/** Reads files of text, with messages that say what is wrong with a file as a whole. */
public final class TextFile {

  private static final long LARGEST = 10_000_000;

  private TextFile() {}

  /**
   * The text of a file.
   *
   * @throws DataException when it is missing, too large, or not UTF-8
   */
  public static String read(Path file) {
    return decoded(bytes(file), file);
  }

  static byte[] bytes(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw unusable(file, "cannot be read: it is a folder");
      }
      if (Files.size(file) > LARGEST) {
        throw unusable(file, "is larger than " + LARGEST + " bytes, which no such file is");
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw unusable(file, "does not exist");
    } catch (IOException e) {
      throw unusable(file, "cannot be read: " + reason(e));
    }
  }

  static String decoded(byte[] bytes, Path file) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw unusable(file, "is not UTF-8 text");
    }
  }

  static DataException unusable(Path file, String problem) {
    return new DataException(
        Place.wholeOf(name(file)), "the file " + problem, "Check " + file.toAbsolutePath() + ".");
  }

  static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "permission is denied";
    }
    if (e instanceof NoSuchFileException) {
      return "there is no such folder";
    }
    return e.getMessage() == null ? "the disk does not answer" : e.getMessage();
  }

  static String name(Path file) {
    return String.valueOf(file.getFileName());
  }
}
