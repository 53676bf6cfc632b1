package plyworth.shared.data;

/**
 * Where something stands in a file.
 *
 * @param source name of the file or resource, as the user knows it
 * @param line line, from 1; 0 when the whole file is meant
 * @param column column, from 1; 0 when the whole line is meant
 * @param path keys that lead there, for example {@code brief.pack.width}; may be empty
 */
public record Place(String source, int line, int column, String path) {

  /** The file as a whole. */
  public static Place wholeOf(String source) {
    return new Place(source, 0, 0, "");
  }

  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(source);
    if (line > 0) {
      text.append(", line ").append(line);
    }
    if (column > 0) {
      text.append(", column ").append(column);
    }
    if (!path.isEmpty()) {
      text.append(", at ").append(path);
    }
    return text.toString();
  }
}
