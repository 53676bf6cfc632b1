package plyworth.shared.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Turns text into {@link Json}, strictly.
 *
 * <p>Refused: duplicate keys, comments, trailing text, non-finite numbers, more than 10 million
 * characters, nesting beyond 50.
 */
public final class JsonText {

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxNestingDepth(50)
                  .maxDocumentLength(10_000_000)
                  .maxStringLength(100_000)
                  .maxNameLength(1_000)
                  .maxNumberLength(40)
                  .maxTokenCount(2_000_000)
                  .build())
          .build();

  private final JsonParser parser;
  private final String source;
  private String at = "";

  private JsonText(JsonParser parser, String source) {
    this.parser = parser;
    this.source = source;
  }

  /**
   * Reads one JSON value.
   *
   * @param text the whole text
   * @param source name of the file, for messages
   * @throws DataException with the place, when the text is not JSON or breaks a limit
   */
  public static Json read(String text, String source) {
    try (JsonParser parser = FACTORY.createParser(text)) {
      return new JsonText(parser, source).whole();
    } catch (IOException e) {
      throw new DataException(Place.wholeOf(source), e.getMessage(), "");
    }
  }

  private DataException unreadable(JsonProcessingException e) {
    JsonLocation location = e.getLocation();
    Place place =
        location == null
            ? Place.wholeOf(source)
            : new Place(source, location.getLineNr(), location.getColumnNr(), at);
    if (e instanceof JsonEOFException
        || e.getOriginalMessage().startsWith("Unexpected end-of-input")) {
      return new DataException(
          place, "the file ends before the value is complete", "Restore the whole file.");
    }
    String message = e.getOriginalMessage();
    if (message.startsWith("Non-standard token")) {
      return new DataException(
          place, "NaN and Infinity are not JSON", "Write null where a figure is unknown.");
    }
    String remedy =
        message.startsWith("Duplicate field") ? "Remove one of the two." : "Mend the file.";
    return new DataException(place, "not readable as JSON: " + message, remedy);
  }

  private Json whole() throws IOException {
    try {
      return only();
    } catch (JsonProcessingException e) {
      throw unreadable(e);
    }
  }

  private Json only() throws IOException {
    if (parser.nextToken() == null) {
      throw new DataException(Place.wholeOf(source), "the file is empty", "Restore the file.");
    }
    Json value = value("");
    if (parser.nextToken() != null) {
      throw new DataException(here(""), "text follows the end of the value", "Remove it.");
    }
    return value;
  }

  private Json value(String path) throws IOException {
    Place place = here(path);
    JsonToken token = parser.currentToken();
    return switch (token) {
      case START_OBJECT -> object(place, path);
      case START_ARRAY -> array(place, path);
      case VALUE_STRING -> new Json.Text(place, parser.getText());
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Num(place, finite(place));
      case VALUE_TRUE, VALUE_FALSE -> new Json.Flag(place, token == JsonToken.VALUE_TRUE);
      default -> new Json.Null(place);
    };
  }

  private Json object(Place place, String path) throws IOException {
    Map<String, Json> entries = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String key = parser.currentName();
      String inner = path.isEmpty() ? key : path + "." + key;
      at = inner;
      parser.nextToken();
      entries.put(key, value(inner));
      at = path;
    }
    return new Json.Obj(place, entries);
  }

  private Json array(Place place, String path) throws IOException {
    List<Json> items = new ArrayList<>();
    at = path + "[0]";
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(at));
      at = path + "[" + items.size() + "]";
    }
    at = path;
    return new Json.Arr(place, items);
  }

  private double finite(Place place) throws IOException {
    double number = parser.getDoubleValue();
    if (!Double.isFinite(number)) {
      throw new DataException(
          place, parser.getText() + " is too large for a number", "Write a finite number.");
    }
    return number;
  }

  private Place here(String path) {
    JsonLocation at = parser.currentTokenLocation();
    return new Place(source, at.getLineNr(), at.getColumnNr(), path);
  }
}
