package plyworth.shared.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.data.JsonText;
import plyworth.shared.data.Place;
import plyworth.shared.study.Study;

/**
 * The study file, {@code NAME.study.json}: UTF-8, keys in a fixed order, units visible.
 *
 * <p>Whatever is wrong with a file is a {@link DataException} that names the file, the line, the
 * keys that lead there, what is wrong and, where it can be told, what would be right.
 */
public final class StudyFile {

  /** How the name of a study file ends. */
  public static final String SUFFIX = ".study.json";

  /** Fingerprint of a file that does not exist yet. */
  public static final String NEW = "";

  private StudyFile() {}

  /**
   * A study as it was on disk.
   *
   * @param study the study
   * @param fingerprint of the bytes it was read from; to be handed to {@link #save}
   */
  public record Opened(Study study, String fingerprint) {}

  /**
   * Reads a file.
   *
   * @throws DataException when it cannot be read, or is wrong
   */
  public static Opened open(Path file) {
    byte[] bytes = TextFile.bytes(file);
    return new Opened(read(TextFile.decoded(bytes, file), TextFile.name(file)), fingerprint(bytes));
  }

  /**
   * Writes a file, {@linkplain #selfContained self-contained}, whole or not at all.
   *
   * @param file where to
   * @param study what to write
   * @param expected fingerprint of the file as it was last read or written; {@link #NEW} when it
   *     must not exist
   * @return the fingerprint of what was written
   * @throws DataException when the file on disk is another than expected, or cannot be written; it
   *     is then as it was
   */
  public static String save(Path file, Study study, String expected) {
    if (!fingerprint(file).equals(expected)) {
      throw new DataException(
          Place.wholeOf(TextFile.name(file)),
          expected.equals(NEW)
              ? "the file exists already"
              : "the file was changed by somebody else since it was opened",
          "Save under another name, or open the file to see what it holds now.");
    }
    byte[] bytes = write(study).getBytes(StandardCharsets.UTF_8);
    try {
      SafeWrite.replace(file, bytes);
    } catch (IOException e) {
      throw TextFile.unusable(file, "cannot be written: " + TextFile.reason(e));
    }
    return fingerprint(bytes);
  }

  /**
   * The fingerprint of a file as it is on disk now; {@link #NEW} when there is none.
   *
   * @throws DataException when it cannot be read
   */
  public static String fingerprint(Path file) {
    return Files.exists(file) ? fingerprint(TextFile.bytes(file)) : NEW;
  }

  /**
   * Reads a study from the text of a file.
   *
   * @param text the whole text
   * @param source name of the file, for messages
   * @throws DataException when it is wrong
   */
  public static Study read(String text, String source) {
    return Fields.read(Migrations.lift(JsonText.read(text, source)), StudyCodec::read);
  }

  /** The text of the file of a study, {@linkplain #selfContained self-contained}. */
  public static String write(Study study) {
    return JsonPrint.text(StudyCodec.write(selfContained(study)));
  }

  /**
   * The study carrying every material and process it uses, sorted by id, so that it gives the same
   * figures wherever it is opened.
   */
  public static Study selfContained(Study study) {
    return SelfContained.of(study);
  }

  private static String fingerprint(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
