package plyworth.shared.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.Map;

/**
 * Writes {@link Json} the same way every time: two-space indent, LF, keys in their order; an object
 * or array of plain values stands on one line when it is short enough.
 */
public final class JsonPrint {

  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

  private static final int LONGEST_OBJECT_LINE = 160;

  private static final int LONGEST_ARRAY_LINE = 80;

  private JsonPrint() {}

  /** The value as text, ending in a line feed. */
  public static String text(Json json) {
    return text(json, indented(), true) + "\n";
  }

  private static PrettyPrinter indented() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = onOneLine();
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    return printer;
  }

  private static DefaultPrettyPrinter onOneLine() {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(
            Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
    printer.indentObjectsWith(DefaultPrettyPrinter.FixedSpaceIndenter.instance);
    printer.indentArraysWith(DefaultPrettyPrinter.FixedSpaceIndenter.instance);
    return printer;
  }

  private static String text(Json json, PrettyPrinter printer, boolean shorten) {
    StringWriter writer = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(writer)) {
      generator.setPrettyPrinter(printer);
      write(json, generator, shorten);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return writer.toString();
  }

  private static void write(Json json, JsonGenerator generator, boolean shorten)
      throws IOException {
    if (shorten && holdsPlainValues(json)) {
      String line = text(json, onOneLine(), false);
      if (line.length() <= (json instanceof Json.Obj ? LONGEST_OBJECT_LINE : LONGEST_ARRAY_LINE)) {
        generator.writeRawValue(line);
        return;
      }
    }
    if (json instanceof Json.Obj object) {
      generator.writeStartObject();
      for (Map.Entry<String, Json> entry : object.entries().entrySet()) {
        generator.writeFieldName(entry.getKey());
        write(entry.getValue(), generator, shorten);
      }
      generator.writeEndObject();
    } else if (json instanceof Json.Arr array) {
      generator.writeStartArray();
      for (Json item : array.items()) {
        write(item, generator, shorten);
      }
      generator.writeEndArray();
    } else {
      writePlain(json, generator);
    }
  }

  private static boolean holdsPlainValues(Json json) {
    Collection<Json> inner =
        json instanceof Json.Obj object
            ? object.entries().values()
            : json instanceof Json.Arr array ? array.items() : null;
    return inner != null
        && inner.stream().noneMatch(v -> v instanceof Json.Obj || v instanceof Json.Arr);
  }

  private static void writePlain(Json json, JsonGenerator generator) throws IOException {
    if (json instanceof Json.Text text) {
      generator.writeString(text.text());
    } else if (json instanceof Json.Num number) {
      writeNumber(number.number(), generator);
    } else if (json instanceof Json.Flag flag) {
      generator.writeBoolean(flag.flag());
    } else {
      generator.writeNull();
    }
  }

  private static void writeNumber(double number, JsonGenerator generator) throws IOException {
    if (number == Math.rint(number) && Math.abs(number) < 1e15) {
      generator.writeNumber((long) number);
    } else {
      generator.writeNumber(number);
    }
  }
}
