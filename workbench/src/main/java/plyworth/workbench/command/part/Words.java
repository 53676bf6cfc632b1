package plyworth.workbench.command.part;

import java.util.Arrays;
import java.util.List;
import picocli.CommandLine.TypeConversionException;
import plyworth.shared.data.Choice;

/** Reads the words behind options. */
public final class Words {

  private Words() {}

  /** The whole number that is written. */
  public static int whole(String text) {
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw new TypeConversionException("write a whole number, not \"" + text + "\"");
    }
  }

  /** The constant that is named, in whatever case. */
  public static <E extends Enum<E>> E choice(String text, Class<E> type) {
    List<String> known = Arrays.stream(type.getEnumConstants()).map(Choice::plain).toList();
    for (E constant : type.getEnumConstants()) {
      if (Choice.plain(constant).equalsIgnoreCase(text)) {
        return constant;
      }
    }
    int last = known.size() - 1;
    String all = String.join(", ", known.subList(0, last)) + " or " + known.get(last);
    throw new TypeConversionException("write " + all + ", not \"" + text + "\"");
  }
}
