package plyworth.shared.data;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads comma-separated tables with one header line, strictly. */
public final class Csv {

  private static final ObjectReader READER =
      new CsvMapper().enable(CsvParser.Feature.WRAP_AS_ARRAY).readerFor(String[].class);

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
    List<Row> rows = new ArrayList<>();
    try (MappingIterator<String[]> lines = READER.readValues(text)) {
      checkHeader(lines, source, header);
      while (lines.hasNextValue()) {
        int line = lines.getCurrentLocation().getLineNr();
        rows.add(row(new Place(source, line, 0, ""), header, lines.nextValue()));
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

  private static void checkHeader(
      MappingIterator<String[]> lines, String source, List<String> header) throws IOException {
    List<String> found = lines.hasNextValue() ? Arrays.asList(lines.nextValue()) : List.of();
    if (!found.equals(header)) {
      throw new DataException(
          new Place(source, 1, 0, ""),
          "the columns are " + String.join(",", found),
          "They must be " + String.join(",", header) + ".");
    }
  }

  private static Row row(Place place, List<String> header, String[] cells) {
    if (cells.length != header.size()) {
      throw new DataException(
          place,
          "the line has " + cells.length + " cells",
          "It must have " + header.size() + ": " + String.join(",", header) + ".");
    }
    Map<String, String> byColumn = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      byColumn.put(header.get(i), cells[i].strip());
    }
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
