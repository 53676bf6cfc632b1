package plyworth.workbench.desktop.evidence;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JTextField;
import plyworth.shared.quantity.Unit;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.desktop.part.Entry;
import plyworth.workbench.desktop.part.EntryForm;
import plyworth.workbench.desktop.part.NumberEntry;
import plyworth.workbench.desktop.part.Typed;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/** The fields of a reading: its value in any unit of its kind, how sure it is, and where from. */
final class ReadingFields {

  private static final int COLUMNS = 24;

  private final JTextField value = field("value");
  private final JComboBox<String> unit = new JComboBox<>();
  private final JTextField spread = field("spread");
  private final JTextField samples = field("samples");
  private final JTextField method = field("method");
  private final JTextField date = field("date");
  private final JTextField note = field("note");
  private final Entry valueEntry;
  private final Entry spreadEntry;
  private final Entry samplesEntry;
  private final Entry methodEntry;
  private final Entry dateEntry;
  private List<Unit> units = List.of();
  private String declared = "";

  /** Adds the fields to a form. */
  ReadingFields(EntryForm form) {
    unit.setName("reading-unit");
    unit.getAccessibleContext().setAccessibleName(Words.of("reading.unit"));
    valueEntry = form.add("reading.value", value, unit);
    spreadEntry = form.add("reading.spread", spread, null);
    samplesEntry = form.add("reading.samples", samples, null);
    methodEntry = form.add("reading.method", method, null);
    dateEntry = form.add("reading.date", date, null);
    form.add("reading.note", note, null);
    samples.setText("1");
    for (JTextField each : List.of(value, spread, samples, method, date)) {
      Typed.into(each, () -> check(false));
    }
  }

  private static JTextField field(String name) {
    JTextField field = new JTextField(COLUMNS);
    field.setName("reading-" + name);
    return field;
  }

  /** Offers the units of a figure: that of the study first, then those that convert into it. */
  void measuredIn(String inStudy) {
    if (inStudy.equals(declared) && unit.getItemCount() > 0) {
      return;
    }
    declared = inStudy;
    units =
        Unit.named(inStudy).stream()
            .flatMap(own -> Stream.concat(Stream.of(own), others(own)))
            .toList();
    unit.removeAllItems();
    units.forEach(each -> unit.addItem(each.symbol()));
    if (units.isEmpty()) {
      unit.addItem(
          inStudy.isEmpty() || inStudy.equals("1")
              ? Words.of("reading.pure-number")
              : UnitText.of(inStudy));
    }
    unit.setEnabled(units.size() > 1);
  }

  private static Stream<Unit> others(Unit own) {
    return Arrays.stream(Unit.values()).filter(u -> u.kind() == own.kind() && u != own);
  }

  /** Shows a reading that there is. */
  void show(Measurement reading) {
    value.setText(NumberEntry.text(reading.value()));
    spread.setText(NumberEntry.text(reading.spread()));
    samples.setText(Integer.toString(reading.samples()));
    method.setText(reading.method());
    date.setText(reading.date());
    note.setText(reading.note());
  }

  /** What is typed, right or wrong. */
  List<String> texts() {
    return Stream.of(value, spread, samples, method, date, note).map(JTextField::getText).toList();
  }

  /**
   * What stands in the fields.
   *
   * @param figure what was measured
   * @return empty when something is wrong, which is then said beside each field that is
   */
  Optional<Measurement> read(String figure) {
    check(true);
    Optional<Entry> wrong = entries().filter(Entry::refused).findFirst();
    wrong.ifPresent(entry -> entry.field().requestFocusInWindow());
    return wrong.isPresent()
        ? Optional.empty()
        : Optional.of(
            new Measurement(
                figure,
                inStudyUnit(NumberEntry.of(value.getText()).orElseThrow()),
                declared,
                NumberEntry.of(spread.getText()).orElseThrow(),
                NumberEntry.whole(samples.getText()).orElseThrow(),
                methodEntry.text(),
                dateEntry.text(),
                note.getText().strip()));
  }

  private double inStudyUnit(double number) {
    return units.isEmpty() || unit.getSelectedIndex() == 0
        ? number
        : Digits.exported(
            units.get(0).fromInside(units.get(unit.getSelectedIndex()).toInside(number)));
  }

  /** Says what is wrong with the value besides its form. */
  void refuse(String reason) {
    valueEntry.refuse(reason);
    value.requestFocusInWindow();
  }

  private Stream<Entry> entries() {
    return Stream.of(valueEntry, spreadEntry, samplesEntry, methodEntry, dateEntry);
  }

  /**
   * Looks at every field.
   *
   * @param empty whether one that must not stay empty is wrong already
   */
  private void check(boolean empty) {
    OptionalDouble number = NumberEntry.of(value.getText());
    judge(valueEntry, number.orElse(0) > 0, empty, "reading.value.refused");
    OptionalDouble factor = NumberEntry.of(spread.getText());
    judge(spreadEntry, factor.orElse(0) >= 1, empty, "reading.spread.refused");
    OptionalInt count = NumberEntry.whole(samples.getText());
    judge(samplesEntry, count.orElse(0) >= 1, empty, "reading.samples.refused");
    judge(methodEntry, !methodEntry.text().isEmpty(), empty, "reading.method.refused");
    judge(dateEntry, isDay(dateEntry.text()), empty, "reading.date.refused");
  }

  private static void judge(Entry entry, boolean right, boolean empty, String refusal) {
    if (right || entry.text().isEmpty() && !empty) {
      entry.accept();
    } else {
      entry.refuse(Words.of(refusal));
    }
  }

  private static boolean isDay(String text) {
    try {
      return text.isEmpty() || LocalDate.parse(text) != null;
    } catch (DateTimeParseException e) {
      return false;
    }
  }
}
