package plyworth.workbench.desktop.material;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextField;
import plyworth.shared.material.Material;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.PropertyReaders;
import plyworth.workbench.analysis.StudyMaterials;
import plyworth.workbench.desktop.part.Beside;
import plyworth.workbench.desktop.part.Buttons;
import plyworth.workbench.desktop.part.Command;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.part.RowTable;
import plyworth.workbench.desktop.part.Typed;
import plyworth.workbench.desktop.session.Pipeline;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.View;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.PropertyNames;
import plyworth.workbench.desktop.word.Words;

/**
 * The materials at hand with every figure and its source, to be found, changed, copied, taken out
 * into a file and read from one. What is changed is the study's own copy.
 */
public final class MaterialsView implements View {

  /** Letters that a field to search by has room for at least. */
  private static final int SEARCHED = 10;

  private static final int WIDEST = 260;
  private static final int LIST_HEIGHT = 230;
  private static final double LIST_SHARE = 0.34;
  private static final double TABLE_SHARE = 0.55;

  private final MaterialList list = new MaterialList(this::showMaterial);
  private final RowTable table =
      new RowTable("properties", Words.of("materials.properties.name"), WIDEST);
  private final JTextField words = new JTextField(SEARCHED);
  private final JComboBox<String> units = UnitChoice.box("materials-units", false);
  private final Page page = new Page("material-page", Words.of("materials.page.name"));
  private final JPanel panel = new JPanel(new BorderLayout());
  private final MaterialFiles files = new MaterialFiles(panel);
  private final Command change = Command.of("materials.change", null, this::change);
  private final Command forget = Command.of("materials.forget", null, this::forget);
  private final Command copy = Command.of("materials.copy", null, this::copy);
  private final Command remove = Command.of("materials.remove", null, this::remove);
  private final Command read =
      Command.of("materials.import", null, () -> files.read(session(), customary()));
  private final Command export =
      Command.of("materials.export", null, () -> files.export(session().study().orElseThrow()));
  private Session session;
  private Study shown;
  private PropertyReaders readers;
  private MaterialRows rows = new MaterialRows(List.of(), false);
  private String property = "";

  /** A view of no materials yet. */
  public MaterialsView() {
    words.setName("properties-words");
    Typed.into(words, this::showMaterial);
    Keys.bind(words, "DOWN", table::requestFocusInWindow);
    units.addActionListener(event -> showMaterial());
    table.whenChosen(this::choose);
    table.whenEntered(this::change);
    JPanel above = new JPanel(new BorderLayout());
    above.add(list.component(), BorderLayout.CENTER);
    above.add(Buttons.row(copy, remove, read, export), BorderLayout.SOUTH);
    JPanel middle = new JPanel(new BorderLayout(0, 4));
    middle.add(narrowing(), BorderLayout.NORTH);
    middle.add(new JScrollPane(table), BorderLayout.CENTER);
    middle.add(Buttons.row(change, forget), BorderLayout.SOUTH);
    JSplitPane below = split("material-split", middle, new JScrollPane(page), TABLE_SHARE);
    JSplitPane whole = split("materials-split", above, below, LIST_SHARE);
    whole.setDividerLocation(UIScale.scale(LIST_HEIGHT));
    panel.setName("materials-view");
    panel.add(whole, BorderLayout.CENTER);
  }

  private static JSplitPane split(String name, JComponent top, JComponent bottom, double share) {
    JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, top, bottom);
    split.setName(name);
    split.setResizeWeight(share);
    split.setBorder(BorderFactory.createEmptyBorder());
    return split;
  }

  private JComponent narrowing() {
    JPanel choice = new JPanel(new BorderLayout(6, 0));
    choice.add(Marked.label("materials.units", units), BorderLayout.WEST);
    choice.add(units, BorderLayout.CENTER);
    JPanel row = new JPanel(new BorderLayout(6, 0));
    row.add(Marked.label("materials.narrow", words), BorderLayout.WEST);
    row.add(words, BorderLayout.CENTER);
    JPanel head = new Beside(row, choice);
    head.setBorder(BorderFactory.createEmptyBorder(6, 8, 0, 8));
    return head;
  }

  @Override
  public JComponent component() {
    return panel;
  }

  /** What the keyboard works on. */
  public JComponent target() {
    return list.target();
  }

  private Session session() {
    return session;
  }

  private boolean customary() {
    return UnitChoice.customary(units);
  }

  @Override
  public void show(Session now) {
    session = now;
    Study study = now.study().orElse(null);
    boolean other = study != null && (shown == null || !sameData(study, shown));
    shown = study;
    read.setEnabled(study != null);
    export.setEnabled(study != null);
    if (other) {
      readers = PropertyReaders.of(now.installed());
      list.show(study);
      showMaterial();
    }
  }

  /** A weight that moves changes nothing here. */
  private static boolean sameData(Study a, Study b) {
    return Pipeline.sameScores(a, b)
        && a.results().equals(b.results())
        && a.remarks().equals(b.remarks())
        && a.decision().equals(b.decision());
  }

  /** Brings a property of a material in front. */
  public void open(String material, String wanted) {
    property = wanted;
    words.setText("");
    list.find(material);
    table.requestFocusInWindow();
  }

  private void showMaterial() {
    Optional<Material> material = shown == null ? Optional.empty() : list.chosen();
    rows =
        material
            .map(m -> MaterialRows.of(m, readers, words.getText(), customary()))
            .orElse(new MaterialRows(List.of(), customary()));
    int at =
        IntStream.range(0, rows.rows().size())
            .filter(i -> rows.rows().get(i).id().equals(property))
            .findFirst()
            .orElse(rows.rows().isEmpty() ? -1 : 0);
    table.show(rows.table(), at);
    choose(at);
  }

  private void choose(int row) {
    property = row < 0 ? property : rows.rows().get(row).id();
    Optional<Material> material = shown == null ? Optional.empty() : list.chosen();
    page.show(
        material
            .map(m -> MaterialPage.of(shown, m, chosen(), customary()))
            .orElseGet(() -> "<html>" + Words.of("materials.none") + "</html>"));
    change.setEnabled(chosen().isPresent());
    forget.setEnabled(
        chosen()
            .filter(r -> r.property().isPresent() && !r.id().equals(Material.DENSITY))
            .isPresent());
    copy.setEnabled(material.isPresent());
    remove.setEnabled(
        material
            .filter(m -> StudyMaterials.carries(shown, m.id()) && !list.uses(m.id()))
            .isPresent());
  }

  private Optional<MaterialRows.Row> chosen() {
    return rows.rows().stream().filter(row -> row.id().equals(property)).findFirst();
  }

  private void change() {
    Optional<Material> material = list.chosen();
    if (material.isPresent() && chosen().isPresent()) {
      new PropertyDialog(panel, session, material.get(), chosen().get(), customary()).open();
    }
  }

  private void forget() {
    Material material = list.chosen().orElseThrow();
    String id = property;
    session.reckonWith(
        () -> Words.of("edit.property", PropertyNames.of(id), MaterialNames.of(material)),
        study ->
            StudyMaterials.with(study, study.materialsBefore().require(material.id()).without(id)));
  }

  private void copy() {
    Material like = list.chosen().orElseThrow();
    new NewMaterialDialog(panel, like, shown.materialsBefore(), this::add).open();
  }

  private void add(Material material) {
    list.choose(material.id());
    session.reckonWith(
        () -> Words.of("edit.new-material", material.name()),
        study -> StudyMaterials.with(study, material));
  }

  private void remove() {
    Material material = list.chosen().orElseThrow();
    session.reckonWith(
        () -> Words.of("edit.no-material", MaterialNames.of(material)),
        study -> StudyMaterials.without(study, material.id()));
  }
}
