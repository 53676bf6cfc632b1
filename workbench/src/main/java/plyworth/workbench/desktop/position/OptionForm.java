package plyworth.workbench.desktop.position;

import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import plyworth.shared.material.Material;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Option;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.Buttons;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.Words;

/**
 * Fills the selected position: with a material in one or several amounts, or with another layer.
 */
final class OptionForm {

  private final OptionTable table;
  private final MaterialPicker picker = new MaterialPicker(this::suggest, this::taken);
  private final LayerForm layer = new LayerForm(this::add);
  private final JTextArea goal = StackPanel.words(" ", Font.PLAIN);
  private final StackPanel panel = new StackPanel();
  private Session session;
  private Material suggested;

  OptionForm(OptionTable table) {
    this.table = table;
    goal.setName("option-goal");
    panel.setBorder(BorderFactory.createEmptyBorder(4, 0, 4, 0));
    panel.add(picker.component());
    panel.add(layer.component());
    panel.add(goal);
    panel.add(
        Buttons.row(Buttons.of("option.add", this::add), Buttons.of("option.join", this::join)));
  }

  JComponent component() {
    return panel;
  }

  /** Shows what is at hand, and where it would go. */
  void show(Session now) {
    session = now;
    now.study().ifPresent(this::show);
  }

  private void show(Study study) {
    picker.show(study.materialsAtHand().all());
    layer.offer(study.processesAtHand());
    goal.setText(
        table
            .at()
            .map(at -> Words.of("option.goal", at.position() + 1, titleOf(study, at)))
            .orElse(Words.of("option.no-goal")));
  }

  private static String titleOf(Study study, OptionTable.At at) {
    return study.positions().get(at.position()).title();
  }

  private void suggest(Material material) {
    if (session != null && material != suggested) {
      suggested = material;
      Study study = session.study().orElseThrow();
      int position = table.at().map(OptionTable.At::position).orElse(0);
      layer.suggest(
          Suggestion.layer(study, position, material), Suggestion.process(study, material));
    }
  }

  /** A material was picked by Enter: how much of it is the next question. */
  private void taken() {
    picker
        .marked()
        .ifPresentOrElse(
            material ->
                table
                    .at()
                    .ifPresent(
                        at ->
                            layer.ask(
                                MaterialNames.of(material),
                                titleOf(session.study().orElseThrow(), at))),
            picker::ask);
  }

  /** A material was dropped on the selected position: it goes in where its amount is known. */
  void dropped() {
    if (layer.hasAmount()) {
      add();
    } else {
      taken();
    }
  }

  private void add() {
    layers()
        .ifPresent(
            layers ->
                table
                    .at()
                    .ifPresent(
                        at -> add(session, table, at, layers.stream().map(Option::of).toList())));
  }

  /** Adds options to a position, as one edit, and selects the first of them. */
  static void add(Session session, OptionTable table, OptionTable.At at, List<Option> options) {
    String title = titleOf(session.study().orElseThrow(), at);
    int offered = session.study().get().positions().get(at.position()).options().size();
    session.change(
        "edit.option-added",
        study -> PositionEdits.add(study, at.position(), options),
        title,
        options.size());
    table.select(new OptionTable.At(at.position(), offered));
  }

  private void join() {
    layers()
        .filter(this::single)
        .ifPresent(
            layers ->
                table
                    .at()
                    .ifPresent(
                        at ->
                            session.change(
                                "edit.option-joined",
                                study -> joined(study, at, layers.get(0)),
                                titleOf(session.study().orElseThrow(), at))));
  }

  private boolean single(List<Layer> layers) {
    if (layers.size() > 1) {
      layer.refuseSeveral();
    }
    return layers.size() == 1;
  }

  private static Study joined(Study study, OptionTable.At at, Layer inner) {
    Option outer = study.positions().get(at.position()).options().get(at.option());
    List<Layer> both = Stream.concat(outer.layers().stream(), Stream.of(inner)).toList();
    return PositionEdits.replace(study, at.position(), at.option(), new Option(both));
  }

  private Optional<List<Layer>> layers() {
    if (table.at().isEmpty()) {
      return Optional.empty();
    }
    Optional<Material> material = picker.marked();
    if (material.isEmpty()) {
      picker.ask();
    }
    return material.flatMap(layer::layers);
  }
}
