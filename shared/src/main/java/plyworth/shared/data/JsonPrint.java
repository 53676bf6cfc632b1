package plyworth.shared.data;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;

/** Writes {@link Json} the same way every time: two-space indent, LF, keys in their order. */
public final class JsonPrint {

  private static final JsonFactory FACTORY =
      JsonFactory.builder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER).build();

  private JsonPrint() {}

  /** The value as text, ending in a line feed. */
  public static String text(Json json) {
    StringWriter writer = new StringWriter();
    try (JsonGenerator generator = FACTORY.createGenerator(writer)) {
      DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
      DefaultPrettyPrinter printer =
          new DefaultPrettyPrinter(
              Separators.createDefaultInstance()
                  .withObjectFieldValueSpacing(Separators.Spacing.AFTER));
      printer.indentObjectsWith(indenter);
      printer.indentArraysWith(indenter);
      generator.setPrettyPrinter(printer);
      write(json, generator);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return writer.append('\n').toString();
  }

  private static void write(Json json, JsonGenerator generator) throws IOException {
    if (json instanceof Json.Obj object) {
      generator.writeStartObject();
      for (Map.Entry<String, Json> entry : object.entries().entrySet()) {
        generator.writeFieldName(entry.getKey());
        write(entry.getValue(), generator);
      }
      generator.writeEndObject();
    } else if (json instanceof Json.Arr array) {
      generator.writeStartArray();
      for (Json item : array.items()) {
        write(item, generator);
      }
      generator.writeEndArray();
    } else {
      writePlain(json, generator);
    }
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
