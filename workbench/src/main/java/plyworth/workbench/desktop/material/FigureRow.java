package plyworth.workbench.desktop.material;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import plyworth.shared.data.Choice;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.material.PropertyDefinition.Along;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.workbench.analysis.PropertyReaders;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.part.Typed;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Scale;

/** The fields of one sourced figure, and what is wrong with them. */
final class FigureRow {

  private static final int SOURCE_WIDTH = 8;

  private final Along along;
  private final QuantityField at;
  private final QuantityField low;
  private final QuantityField typical;
  private final QuantityField high;
  private final JComboBox<String> kind = new JComboBox<>();
  private final JTextField source = new JTextField(SOURCE_WIDTH);
  private final JTextArea message = StackPanel.words("", Font.BOLD);
  private final JButton remove;
  private final Sourced given;
  private final List<String> wrong = new ArrayList<>();
  private JComponent first;

  /**
   * A row.
   *
   * @param number counts the rows, from 1
   * @param figure what stands in the fields at first; null for nothing
   * @param away takes the row away
   */
  FigureRow(int number, Along along, Scale scale, Scale place, Sourced figure, Command away) {
    this.along = along;
    given = figure;
    Range before = figure == null ? Range.UNKNOWN : figure.range();
    at = field("at", number, place, figure == null ? Double.NaN : figure.at());
    low = field("low", number, scale, before.low());
    typical = field("typical", number, scale, before.typical());
    high = field("high", number, scale, before.high());
    for (SourceKind each : SourceKind.values()) {
      kind.addItem(Words.of("source-kind." + Choice.plain(each)));
    }
    kind.setName("property-kind-" + number);
    kind.setSelectedIndex((figure == null ? SourceKind.MEASURED : figure.kind()).ordinal());
    kind.getAccessibleContext().setAccessibleName(Words.of("property.kind.name", number));
    source.setName("property-source-" + number);
    source.setText(figure == null ? "" : figure.source());
    source.setCaretPosition(0);
    Typed.into(source, () -> source.setToolTipText(source.getText()));
    source.setToolTipText(source.getText());
    source.getAccessibleContext().setAccessibleName(Words.of("property.source.name", number));
    message.setName("property-message-" + number);
    remove = away.named(new JButton(away), "row-" + number + ":");
  }

  private static QuantityField field(String what, int number, Scale scale, double figure) {
    return new QuantityField(
        "property-" + what + "-" + number,
        Words.of("property." + what + ".name", number),
        scale,
        figure);
  }

  /** The fields from left to right. */
  List<JComponent> fields() {
    return List.of(
        at.component(),
        low.component(),
        typical.component(),
        high.component(),
        kind,
        source,
        remove);
  }

  /** Where it is said what is wrong. */
  JTextArea message() {
    return message;
  }

  /** What the keyboard works on first. */
  JTextField target() {
    return typical.component();
  }

  /** Shows figures and places in other units. */
  void show(Scale scale, Scale place) {
    at.show(place);
    List.of(low, typical, high).forEach(field -> field.show(scale));
  }

  /** Moves low and high by the factor that typical was moved by. */
  void keepBand() {
    double now = typical.read().figure();
    Range before = given == null ? Range.UNKNOWN : given.range();
    if (before.known() && before.typical() != 0 && !Double.isNaN(now)) {
      low.put(rounded(before.low() * now / before.typical()));
      high.put(rounded(before.high() * now / before.typical()));
    }
  }

  private static double rounded(double figure) {
    return Digits.exported(figure);
  }

  /**
   * The figure in the fields; empty where something is wrong, which is then said.
   *
   * @param single whether it is the only figure, which may hold always
   * @param readers plugins with bounds
   */
  Optional<Sourced> read(boolean single, Scale scale, List<PropertyReaders.Reader> readers) {
    wrong.clear();
    fields().forEach(field -> field.getAccessibleContext().setAccessibleDescription(null));
    first = null;
    double place = place(single);
    OptionalDouble least = figure(low);
    OptionalDouble middle = figure(typical);
    OptionalDouble most = figure(high);
    if (least.isPresent() && middle.isPresent() && most.isPresent()) {
      range(least.getAsDouble(), middle.getAsDouble(), most.getAsDouble(), scale, readers);
    }
    Range range =
        wrong.isEmpty()
            ? new Range(least.getAsDouble(), middle.getAsDouble(), most.getAsDouble())
            : Range.UNKNOWN;
    Optional<Sourced> read = sourced(place, range);
    message.setText(String.join("\n", wrong));
    message.setVisible(!wrong.isEmpty());
    return wrong.isEmpty() ? read : Optional.empty();
  }

  /** A figure that became another does not keep the word of whoever gave the former. */
  private Optional<Sourced> sourced(double place, Range range) {
    String said = source.getText().strip();
    SourceKind origin = SourceKind.values()[kind.getSelectedIndex()];
    boolean stale =
        given != null
            && range.known()
            && !range.equals(given.range())
            && said.equals(given.source())
            && origin == given.kind();
    source.putClientProperty("JComponent.outline", said.isEmpty() || stale ? "error" : null);
    if (said.isEmpty() || stale) {
      note(source, Words.of(stale ? "property.stale-source" : "property.no-source"));
      return Optional.empty();
    }
    return Optional.of(new Sourced(place, range, origin, said));
  }

  private OptionalDouble figure(QuantityField field) {
    return field.read(text -> note(field.component(), text));
  }

  private double place(boolean single) {
    at.mark(false);
    if (single && at.component().getText().isBlank()) {
      return Double.NaN;
    }
    OptionalDouble read = figure(at);
    double place = read.orElse(Double.NaN);
    boolean impossible = along == Along.GAUGE ? place <= 0 : place < 0 || place > 100;
    if (along != Along.NOTHING && impossible) {
      at.mark(true);
      note(at.component(), Words.of("property.no-place"));
    }
    return place;
  }

  private void range(
      double least, double middle, double most, Scale scale, List<PropertyReaders.Reader> readers) {
    if (!(least <= middle && middle <= most)) {
      low.mark(least > middle);
      high.mark(most < middle);
      note(
          (least > middle ? low : high).component(),
          Words.of(
              "property.order",
              Digits.sensible(scale.shown(least)),
              Digits.sensible(scale.shown(middle)),
              Digits.sensible(scale.shown(most))));
      return;
    }
    for (PropertyReaders.Reader reader : readers) {
      PropertyDefinition bounds = reader.definition();
      if (least < bounds.lowest() || most > bounds.highest()) {
        low.mark(least < bounds.lowest());
        high.mark(most > bounds.highest());
        note(
            (least < bounds.lowest() ? low : high).component(),
            Words.of(
                "property.bounds",
                scale.typed(bounds.lowest()),
                scale.typed(bounds.highest()),
                scale.symbol(),
                MaterialRows.title(reader.plugin().plugin())));
        return;
      }
    }
  }

  private void note(JComponent where, String text) {
    wrong.add(text);
    where.getAccessibleContext().setAccessibleDescription(text);
    first = first == null ? where : first;
  }

  /** The first field that is wrong. */
  Optional<JComponent> firstWrong() {
    return Optional.ofNullable(first);
  }
}
