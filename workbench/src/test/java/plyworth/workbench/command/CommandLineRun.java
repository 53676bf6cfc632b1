package plyworth.workbench.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonText;

/**
 * What a run of the command line gave.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it said of itself
 */
public record CommandLineRun(int code, String out, String err) {

  /** The program as it was packed, its plugins included. */
  static final Path HOME = Path.of("target", "plyworth");

  public static CommandLineRun of(Object... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    String[] texts = List.of(arguments).stream().map(Object::toString).toArray(String[]::new);
    int code =
        Plyworth.run(
            new Workplace(HOME),
            (study, catalog) -> 0,
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            texts);
    return new CommandLineRun(code, out.toString(), err.toString());
  }

  /** What it printed, as JSON. */
  public Json json() {
    return JsonText.read(out, "output");
  }

  /** A value in the JSON it printed; keys and indexes lead to it. */
  public Json json(Object... path) {
    Json at = json();
    for (Object step : path) {
      at =
          step instanceof Integer index
              ? ((Json.Arr) at).items().get(index)
              : ((Json.Obj) at).entries().get(step);
    }
    return at;
  }

  public double number(Object... path) {
    return ((Json.Num) json(path)).number();
  }

  public String text(Object... path) {
    return ((Json.Text) json(path)).text();
  }

  /** The keys of an object in the JSON it printed, in order. */
  public List<String> keys(Object... path) {
    return List.copyOf(((Json.Obj) json(path)).entries().keySet());
  }
}
