package plyworth.workbench.desktop.position;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JTextField;
import plyworth.shared.route.StructureText;
import plyworth.shared.structure.Option;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.Buttons;
import plyworth.workbench.desktop.part.Field;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** The selected option in layer notation, to be changed, or to be typed in whole. */
final class WrittenOption {

  private final OptionTable table;
  private final JTextField text = new JTextField();
  private final Field field = new Field("option.written", text);
  private final StackPanel panel = new StackPanel();
  private Session session;
  private Option shown;

  WrittenOption(OptionTable table) {
    this.table = table;
    text.addActionListener(event -> replace());
    panel.add(field.component());
    panel.add(
        Buttons.row(
            Buttons.of("option.replace", this::replace),
            Buttons.of("option.add-written", this::add)));
  }

  JComponent component() {
    return panel;
  }

  /** Shows the selected option; what is being typed stays while the selection does. */
  void show(Session now) {
    session = now;
    Option selected =
        now.study()
            .flatMap(study -> table.at().flatMap(at -> option(study, at)))
            .orElse(Option.NOTHING);
    if (!selected.equals(shown)) {
      shown = selected;
      text.setText(selected.toString());
      text.setCaretPosition(0);
      field.accept();
    }
  }

  private static Optional<Option> option(Study study, OptionTable.At at) {
    return study.positions().stream()
        .skip(at.position())
        .findFirst()
        .flatMap(p -> p.options().stream().skip(at.option()).findFirst());
  }

  private void replace() {
    read(
        option ->
            session.change(
                "edit.option-changed",
                study -> {
                  OptionTable.At at = table.at().orElseThrow();
                  return PositionEdits.replace(study, at.position(), at.option(), option);
                },
                title()));
  }

  private void add() {
    read(option -> OptionForm.add(session, table, table.at().orElseThrow(), List.of(option)));
  }

  private String title() {
    OptionTable.At at = table.at().orElseThrow();
    return session.study().orElseThrow().positions().get(at.position()).title();
  }

  private void read(Consumer<Option> then) {
    if (session == null || table.at().isEmpty()) {
      return;
    }
    Option read;
    try {
      read = read(session.study().orElseThrow(), text.getText().strip());
    } catch (IllegalArgumentException e) {
      field.refuse(Words.of("option.unread", Reason.of(e.getMessage())));
      return;
    }
    field.accept();
    then.accept(read);
  }

  private static Option read(Study study, String written) {
    if (written.equals(Option.NOTHING.toString()) || written.equals(Words.of("option.nothing"))) {
      return Option.NOTHING;
    }
    StructureText reader = new StructureText(study.materialsAtHand(), study.processesAtHand());
    return new Option(reader.read(written).layers());
  }
}
