package plyworth.shared.data;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** Reads the data files that lie beside a class. */
public final class Resources {

  private Resources() {}

  /**
   * The text of a resource in the package of {@code owner}.
   *
   * @throws DataException when there is no such resource
   */
  public static String text(Class<?> owner, String name) {
    try (InputStream stream = owner.getResourceAsStream(name)) {
      if (stream == null) {
        throw new DataException(Place.wholeOf(name), "the data file is missing", "Reinstall.");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
