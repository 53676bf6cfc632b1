package plyworth.shared.data;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Reads comma-separated tables with one header line, strictly. */
public final class Csv {

  /** Read token by token, without data binding, which alone would take longer to load. */
  private static final CsvFactory FACTORY =
      CsvFactory.builder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();

  private Csv() {}

  /**
   * Reads a table.
   *
   * @param text the whole text
   * @param source name of the file, for messages
   * @param header the columns it must have, in this order
   * @throws DataException with the line, when the header or the number of cells is wrong
   */
  public static List<Row> read(String text, String source, List<String> header) {
    return read(text, source, header, List.of());
  }

  /**
   * Reads a table that may have more columns, all of them or none; they are empty where it has
   * none.
   *
   * @param text the whole text
   * @param source name of the file, for messages
   * @param header the columns it must have, in this order
   * @param more the columns that may follow, in this order
   * @throws DataException with the line, when the header or the number of cells is wrong
   */
  public static List<Row> read(String text, String source, List<String> header, List<String> more) {
    List<Row> rows = new ArrayList<>();
    try (CsvParser parser = FACTORY.createParser(withoutMark(text))) {
      parser.nextToken();
      List<String> found = lineFollows(parser) ? cells(parser) : List.of();
      checkHeader(found, source, header, more);
      while (lineFollows(parser)) {
        int line = parser.currentLocation().getLineNr();
        rows.add(row(new Place(source, line, 0, ""), found, cells(parser), more));
      }
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
      throw new DataException(
          new Place(source, line, 0, ""), "not readable as CSV: " + e.getOriginalMessage(), "");
    } catch (IOException e) {
      throw new DataException(Place.wholeOf(source), e.getMessage(), "");
    }
    return List.copyOf(rows);
  }

  /** Spreadsheets begin their files with a byte-order mark. */
  private static String withoutMark(String text) {
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  /** The table is an array of arrays. */
  private static boolean lineFollows(CsvParser parser) throws IOException {
    return parser.nextToken() == JsonToken.START_ARRAY;
  }

  /** The cells of the line that the parser has begun. */
  private static List<String> cells(CsvParser parser) throws IOException {
    List<String> cells = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      cells.add(parser.getText());
    }
    return cells;
  }

  private static void checkHeader(
      List<String> found, String source, List<String> header, List<String> more) {
    List<String> whole = Stream.concat(header.stream(), more.stream()).toList();
    if (!found.equals(header) && !found.equals(whole)) {
      String longer = more.isEmpty() ? "" : ", or these and " + String.join(",", more);
      throw new DataException(
          new Place(source, 1, 0, ""),
          "the columns are " + String.join(",", found),
          "They must be " + String.join(",", header) + longer + ".");
    }
  }

  /** A line may end where the columns begin that a table can do without. */
  private static Row row(Place place, List<String> header, List<String> cells, List<String> more) {
    int least = header.containsAll(more) ? header.size() - more.size() : header.size();
    if (cells.size() != header.size() && cells.size() != least) {
      throw new DataException(
          place,
          "the line has " + cells.size() + " cells",
          "It must have " + header.size() + ": " + String.join(",", header) + ".");
    }
    Map<String, String> byColumn = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      byColumn.put(header.get(i), cells.get(i).strip());
    }
    more.forEach(column -> byColumn.putIfAbsent(column, ""));
    return new Row(place, byColumn);
  }

  /**
   * One line of a table.
   *
   * @param place where it stands
   * @param cells text by column
   */
  public record Row(Place place, Map<String, String> cells) {

    /** The text in a column; may be empty. */
    public String text(String column) {
      return cells.get(column);
    }

    /**
     * The number in a column.
     *
     * @throws DataException when it is not a finite number
     */
    public double number(String column) {
      try {
        double number = Double.parseDouble(text(column));
        if (Double.isFinite(number)) {
          return number;
        }
      } catch (NumberFormatException e) {
        // said below, with the place
      }
      throw new DataException(
          place,
          "\"" + text(column) + "\" in column " + column + " is not a number",
          "Write a finite number with a decimal point.");
    }

    /** The number in a column, NaN when the cell is empty. */
    public double numberOrUnknown(String column) {
      return text(column).isEmpty() ? Double.NaN : number(column);
    }
  }
}
