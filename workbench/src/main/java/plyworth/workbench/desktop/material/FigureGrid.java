package plyworth.workbench.desktop.material;

import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JPanel;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyDefinition.Along;
import plyworth.shared.material.Sourced;
import plyworth.workbench.analysis.PropertyReaders;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Scale;

/** The figures of a property as rows of fields: one, or several along gauge or humidity. */
final class FigureGrid {

  private static final List<String> HEADINGS =
      List.of(
          "property.at",
          "property.low",
          "property.typical",
          "property.high",
          "property.kind",
          "property.source");
  private static final int SOURCE = 5;

  private final JPanel panel = new JPanel(new GridBagLayout());
  private final List<FigureRow> rows = new ArrayList<>();
  private final String unit;
  private final Along along;
  private final List<PropertyReaders.Reader> readers;
  private final Runnable resized;
  private boolean customary;
  private int numbered;

  /**
   * The rows of a property.
   *
   * @param resized told when there are more or fewer rows, or more is said
   */
  FigureGrid(MaterialRows.Row row, boolean customary, Runnable resized) {
    this.customary = customary;
    this.resized = resized;
    unit = row.unit();
    readers = row.readers();
    along = row.along();
    panel.setBorder(BorderFactory.createEmptyBorder(4, 12, 8, 12));
    row.property().map(Property::points).orElse(List.of()).forEach(this::add);
    if (rows.isEmpty()) {
      add(null);
    }
    layOut();
  }

  JComponent component() {
    return panel;
  }

  /** What the keyboard works on first. */
  JComponent target() {
    return rows.get(0).target();
  }

  /** Whether the figures may depend on something. */
  boolean isTable() {
    return along != Along.NOTHING || rows.size() > 1;
  }

  private Scale scale() {
    return Scale.of(unit, customary);
  }

  /** The unit of what the figures may depend on. */
  private Scale place() {
    return Scale.of(along == Along.GAUGE ? "um" : "%", customary);
  }

  /** In which units the numbers in the fields are, in words. */
  String units() {
    String figures = scale().symbol();
    String said = figures.isEmpty() ? Words.of("property.pure") : figures;
    return isTable() && along != Along.NOTHING
        ? Words.of("property.units-both", said, place().symbol())
        : Words.of("property.units-one", said);
  }

  private void add(Sourced figure) {
    FigureRow[] made = new FigureRow[1];
    Command away = Command.of("property.remove", null, () -> remove(made[0]));
    made[0] = new FigureRow(++numbered, along, scale(), place(), figure, away);
    rows.add(made[0]);
  }

  /** Adds an empty row. */
  void addPoint() {
    add(null);
    layOut();
    rows.get(rows.size() - 1).fields().get(0).requestFocusInWindow();
  }

  private void remove(FigureRow row) {
    rows.remove(row);
    layOut();
    target().requestFocusInWindow();
  }

  /** Moves low and high with typical, in every row. */
  void keepBand() {
    rows.forEach(FigureRow::keepBand);
  }

  /** Shows figures in US customary or in metric units. */
  void show(boolean inCustomary) {
    customary = inCustomary;
    rows.forEach(row -> row.show(scale(), place()));
    layOut();
  }

  private void layOut() {
    panel.removeAll();
    boolean table = isTable();
    for (int c = table ? 0 : 1; c < HEADINGS.size(); c++) {
      String title = HEADINGS.get(c);
      panel.add(Marked.label(title, rows.get(0).fields().get(c)), cell(c, 0, 1));
    }
    for (int r = 0; r < rows.size(); r++) {
      List<JComponent> fields = rows.get(r).fields();
      int last = rows.size() > 1 ? fields.size() : fields.size() - 1;
      for (int c = table ? 0 : 1; c < last; c++) {
        panel.add(fields.get(c), cell(c, 2 * r + 1, 1));
      }
      panel.add(rows.get(r).message(), cell(0, 2 * r + 2, HEADINGS.size() + 1));
      rows.get(r).message().setVisible(!rows.get(r).message().getText().isEmpty());
    }
    GridBagConstraints rest = cell(0, 2 * rows.size() + 1, 1);
    rest.weighty = 1;
    panel.add(Box.createGlue(), rest);
    resized.run();
  }

  private static GridBagConstraints cell(int x, int y, int width) {
    GridBagConstraints cell = new GridBagConstraints();
    cell.gridx = x;
    cell.gridy = y;
    cell.gridwidth = width;
    cell.fill = GridBagConstraints.HORIZONTAL;
    cell.weightx = x == SOURCE || width > 1 ? 1 : 0;
    cell.anchor = GridBagConstraints.NORTHWEST;
    cell.insets = new Insets(2, 0, 2, 6);
    return cell;
  }

  /**
   * The property in the fields; empty where something is wrong, which is then said beside it.
   *
   * @throws IllegalArgumentException when two figures hold for the same place
   */
  Optional<Property> read(String id) {
    List<Sourced> points = new ArrayList<>();
    JComponent first = null;
    for (FigureRow row : rows) {
      Optional<Sourced> point = row.read(rows.size() == 1, scale(), readers);
      point.ifPresent(points::add);
      if (point.isEmpty() && first == null) {
        first = row.firstWrong().orElse(null);
      }
    }
    resized.run();
    if (first != null) {
      first.requestFocusInWindow();
    }
    if (points.size() < rows.size()) {
      return Optional.empty();
    }
    if (points.stream().mapToDouble(Sourced::at).distinct().count() < points.size()) {
      throw new IllegalArgumentException(id + " has two figures at one place");
    }
    return Optional.of(new Property(id, unit, points));
  }
}
