package plyworth.workbench.desktop.position;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import plyworth.shared.data.Choice;
import plyworth.shared.material.Material;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Side;
import plyworth.workbench.desktop.part.Field;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.ProcessNames;
import plyworth.workbench.desktop.word.Words;

/** What a layer is besides its material: amounts, process, side, coverage. */
final class LayerForm {

  private final JTextField amounts = new JTextField();
  private final JComboBox<String> process = new JComboBox<>();
  private final JComboBox<String> side = new JComboBox<>();
  private final JTextField coverage = new JTextField();
  private final Field amountsField = new Field("layer.amounts", amounts);
  private final Field processField = new Field("layer.process", process);
  private final Field sideField = new Field("layer.side", side);
  private final Field coverageField = new Field("layer.coverage", coverage);
  private final StackPanel panel = new StackPanel();
  private List<String> processes = List.of();

  /**
   * A form.
   *
   * @param taken told that the layers are wanted, by Enter in a field
   */
  LayerForm(Runnable taken) {
    amounts.setToolTipText(Words.of("layer.amounts.help"));
    amounts.addActionListener(event -> taken.run());
    coverage.addActionListener(event -> taken.run());
    for (Side each : Side.values()) {
      side.addItem(Words.of("side." + Choice.plain(each)));
    }
    Field.align(amountsField, processField, sideField, coverageField);
    panel.add(amountsField.component());
    panel.add(processField.component());
    panel.add(sideField.component());
    panel.add(coverageField.component());
  }

  JComponent component() {
    return panel;
  }

  /** Offers the processes at hand; the first stands for a web that is bought. */
  void offer(ProcessLibrary library) {
    List<Process> layered =
        library.processes().values().stream()
            .filter(p -> p.role() != ProcessRole.FINISHING)
            .toList();
    List<String> ids = new ArrayList<>(List.of(""));
    layered.forEach(p -> ids.add(p.id()));
    if (!ids.equals(processes)) {
      processes = ids;
      process.removeAllItems();
      process.addItem(Words.of("layer.bought"));
      layered.forEach(p -> process.addItem(ProcessNames.of(p)));
    }
  }

  /** Fills in what a layer most likely is. */
  void suggest(Optional<Layer> like, String otherwise) {
    String id = like.map(Layer::process).orElse(otherwise);
    amounts.setText(like.map(LayerForm::amount).orElse(""));
    process.setSelectedIndex(Math.max(0, processes.indexOf(id)));
    side.setSelectedIndex(like.map(Layer::side).orElse(Side.UNSTATED).ordinal());
    coverage.setText(
        like.filter(l -> !Double.isNaN(l.coverage()))
            .map(l -> plain(BigDecimal.valueOf(l.coverage()).movePointRight(2)))
            .orElse(""));
    accept();
  }

  private static String amount(Layer layer) {
    return plain(BigDecimal.valueOf(layer.amount())) + " " + layer.unit().unit().plain();
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }

  private void accept() {
    amountsField.accept();
    processField.accept();
    coverageField.accept();
  }

  /** Whether an amount is typed. */
  boolean hasAmount() {
    return !amounts.getText().isBlank();
  }

  /** Asks how much there is of a material. */
  void ask(String material, String position) {
    amountsField.say(Words.of("layer.ask", material, position));
    amounts.requestFocusInWindow();
    amounts.selectAll();
  }

  /** Says that one amount alone is meant. */
  void refuseSeveral() {
    amountsField.refuse(Words.of("layer.one-amount"));
  }

  /**
   * The layers of a material, one for each amount; empty where something is wrong, which is said.
   */
  Optional<List<Layer>> layers(Material material) {
    accept();
    String id = processes.get(Math.max(0, process.getSelectedIndex()));
    if (id.isEmpty() && !material.kinds().contains("web")) {
      processField.refuse(Words.of("layer.not-bought", MaterialNames.of(material)));
      return Optional.empty();
    }
    List<Amounts.Amount> read;
    try {
      read = Amounts.read(amounts.getText());
    } catch (IllegalArgumentException e) {
      amountsField.refuse(e.getMessage());
      return Optional.empty();
    }
    return share().map(covered -> read.stream().map(a -> layer(material, a, id, covered)).toList());
  }

  private Layer layer(Material material, Amounts.Amount amount, String id, double covered) {
    Side chosen = Side.values()[side.getSelectedIndex()];
    return new Layer(material.id(), amount.figure(), amount.unit(), id, chosen, covered);
  }

  /** The coverage, NaN where none is stated; empty where it is wrong, which is said. */
  private Optional<Double> share() {
    String text = coverage.getText().replace('%', ' ').strip();
    double share = text.isEmpty() ? Double.NaN : shareOf(text);
    if (text.isEmpty() || share > 0 && share <= 1) {
      return Optional.of(share);
    }
    coverageField.refuse(Words.of("layer.coverage.wrong", text));
    return Optional.empty();
  }

  private static double shareOf(String percent) {
    try {
      return new BigDecimal(percent).movePointLeft(2).doubleValue();
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }
}
