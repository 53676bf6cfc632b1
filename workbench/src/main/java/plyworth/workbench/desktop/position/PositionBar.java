package plyworth.workbench.desktop.position;

import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.Buttons;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Field;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.Words;

/** What can be done with a position: add one, rename it, move it, take it out, let it be empty. */
final class PositionBar {

  private final OptionTable table;
  private final JTextField title = new JTextField();
  private final Field titleField = new Field("positions.title", title);
  private final JButton add = Buttons.of("positions.add", this::insert);
  private final JButton rename = Buttons.of("positions.rename", this::rename);
  private final JButton drop = Buttons.of("positions.drop", this::drop);
  private final JButton outward = Buttons.of("positions.outward", () -> move(-1));
  private final JButton inward = Buttons.of("positions.inward", () -> move(1));
  private final JButton remove = Buttons.of("positions.remove-option", this::remove);
  private final JCheckBox nothing;
  private final StackPanel panel = new StackPanel();
  private Session session;
  private OptionTable.At shownAt;
  private String shownTitle;

  PositionBar(OptionTable table) {
    this.table = table;
    Command empty = Command.of("positions.nothing", null, this::allowNothing);
    nothing = Buttons.small(empty.named(new JCheckBox(empty), "button:"));
    title.addActionListener(event -> rename());
    Keys.bind(table.target(), "DELETE", this::remove);
    Keys.bind(table.target(), "F2", title::requestFocusInWindow);
    Keys.bind(table.target(), "alt UP", () -> move(-1));
    Keys.bind(table.target(), "alt DOWN", () -> move(1));
    tellKeys();
    enable(false);
    panel.add(titleField.component());
    panel.add(Buttons.row(add, rename, drop));
    panel.add(Buttons.row(outward, inward, remove));
    panel.add(Buttons.row(nothing));
  }

  JComponent component() {
    return panel;
  }

  /** Shows what can be done with the selected position. */
  void show(Session now) {
    session = now;
    Optional<Study> study = now.study();
    Optional<OptionTable.At> at = study.flatMap(s -> table.at());
    enable(at.isPresent());
    at.ifPresent(selected -> show(study.orElseThrow(), selected));
  }

  private void enable(boolean selected) {
    for (JComponent part : List.of(add, rename, drop, outward, inward, remove, nothing)) {
      part.setEnabled(selected);
    }
  }

  private void tellKeys() {
    rename.setToolTipText(Words.of("positions.key", "F2"));
    outward.setToolTipText(Words.of("positions.key", "Alt+\u2191"));
    inward.setToolTipText(Words.of("positions.key", "Alt+\u2193"));
    remove.setToolTipText(Words.of("positions.key", "Delete"));
  }

  private void show(Study study, OptionTable.At at) {
    Position position = study.positions().get(at.position());
    boolean optional = position.options().contains(Option.NOTHING);
    if (!at.equals(shownAt) || !position.title().equals(shownTitle)) {
      shownAt = at;
      shownTitle = position.title();
      title.setText(shownTitle);
      titleField.accept();
    }
    drop.setEnabled(study.positions().size() > 1);
    outward.setEnabled(at.position() > 0);
    inward.setEnabled(at.position() < study.positions().size() - 1);
    remove.setEnabled(position.options().size() > 1);
    nothing.setSelected(optional);
    nothing.setEnabled(!optional || position.options().size() > 1);
  }

  private Optional<String> typed() {
    String text = title.getText().strip();
    if (text.isEmpty()) {
      titleField.refuse(Words.of("positions.title.empty"));
      return Optional.empty();
    }
    titleField.accept();
    return Optional.of(text);
  }

  private void insert() {
    int at = table.at().map(selected -> selected.position() + 1).orElse(0);
    typed()
        .ifPresent(
            text -> {
              session.change(
                  "edit.position-added", study -> PositionEdits.insert(study, at, text), text);
              table.select(new OptionTable.At(at, 0));
            });
  }

  private void rename() {
    table
        .at()
        .ifPresent(
            at ->
                typed()
                    .ifPresent(
                        text ->
                            session.change(
                                "edit.position-renamed",
                                study -> PositionEdits.rename(study, at.position(), text),
                                text)));
  }

  private void drop() {
    table
        .at()
        .ifPresent(
            at ->
                session.change(
                    "edit.position-removed",
                    study -> PositionEdits.drop(study, at.position()),
                    titleOf(at)));
  }

  private void move(int by) {
    table
        .at()
        .ifPresent(
            at -> {
              session.change(
                  "edit.position-moved",
                  study -> PositionEdits.move(study, at.position(), by),
                  titleOf(at));
              table.select(new OptionTable.At(at.position() + by, at.option()));
            });
  }

  private void remove() {
    table
        .at()
        .ifPresent(
            at ->
                session.change(
                    "edit.option-removed",
                    study -> PositionEdits.remove(study, at.position(), at.option()),
                    titleOf(at)));
  }

  private void allowNothing() {
    boolean allowed = nothing.isSelected();
    table
        .at()
        .ifPresent(
            at ->
                session.change(
                    allowed ? "edit.nothing-allowed" : "edit.nothing-refused",
                    study -> PositionEdits.allowNothing(study, at.position(), allowed),
                    titleOf(at)));
  }

  private String titleOf(OptionTable.At at) {
    return session.study().orElseThrow().positions().get(at.position()).title();
  }
}
