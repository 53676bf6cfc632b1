package plyworth.workbench.desktop.material;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.BorderFactory;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import plyworth.shared.material.Material;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.MaterialUse;
import plyworth.workbench.analysis.StudyMaterials;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.Beside;
import plyworth.workbench.desktop.part.Keys;
import plyworth.workbench.desktop.part.Marked;
import plyworth.workbench.desktop.part.RowTable;
import plyworth.workbench.desktop.part.Typed;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.Words;

/**
 * The materials of a study and of the library, narrowed down by words that must all occur in the
 * name, id, family or kinds of a material.
 */
final class MaterialList {

  /** Letters that a field to search by has room for at least. */
  private static final int SEARCHED = 10;

  private static final int WIDEST = 320;

  private final JPanel panel = new JPanel(new BorderLayout(0, 4));
  private final JTextField words = new JTextField(SEARCHED);
  private final JComboBox<String> which = new JComboBox<>();
  private final RowTable table = new RowTable("materials", Words.of("materials.name"), WIDEST);
  private final Runnable changed;
  private Study study;
  private Set<String> used = Set.of();
  private List<Material> listed = List.of();
  private String chosen = "";

  /**
   * A list.
   *
   * @param changed told when another material is chosen
   */
  MaterialList(Runnable changed) {
    this.changed = changed;
    table.breakLines();
    words.setName("materials-words");
    which.setName("materials-which");
    which.addItem(Words.of("materials.all"));
    which.addItem(Words.of("materials.used"));
    which.addItem(Words.of("materials.own"));
    which.addActionListener(event -> narrow(false));
    Typed.into(words, () -> narrow(false));
    Keys.bind(words, "DOWN", table::requestFocusInWindow);
    table.whenChosen(row -> choose(listed.get(row).id()));
    JPanel search = new JPanel(new BorderLayout(6, 0));
    search.add(Marked.label("materials.search", words), BorderLayout.WEST);
    search.add(words, BorderLayout.CENTER);
    JPanel head = new Beside(search, shown());
    head.setBorder(BorderFactory.createEmptyBorder(6, 8, 0, 8));
    panel.add(head, BorderLayout.NORTH);
    panel.add(new JScrollPane(table), BorderLayout.CENTER);
  }

  private JComponent shown() {
    JPanel shown = new JPanel(new BorderLayout(6, 0));
    shown.add(Marked.label("materials.which", which), BorderLayout.WEST);
    shown.add(which, BorderLayout.CENTER);
    return shown;
  }

  JComponent component() {
    return panel;
  }

  /** What the keyboard works on first. */
  JComponent target() {
    return words;
  }

  /** The material that is chosen, as the study has it before anything was measured. */
  Optional<Material> chosen() {
    return study == null ? Optional.empty() : study.materialsBefore().find(chosen);
  }

  /** Whether the study speaks of a material. */
  boolean uses(String material) {
    return used.contains(material);
  }

  /** Searches for the id of a material. */
  void find(String material) {
    which.setSelectedIndex(0);
    words.setText(material);
  }

  /** Chooses a material. */
  void choose(String material) {
    if (!material.equals(chosen)) {
      chosen = material;
      changed.run();
    }
  }

  /** Shows the materials of a study. */
  void show(Study now) {
    if (now != study) {
      study = now;
      used = MaterialUse.used(now);
      narrow(true);
    }
  }

  /**
   * Lists what is found, the best match first.
   *
   * @param keep whether the chosen material stays chosen; otherwise the first of the list is
   */
  private void narrow(boolean keep) {
    if (study == null) {
      return;
    }
    listed =
        study.materialsBefore().all().stream()
            .filter(this::wanted)
            .sorted(Comparator.comparing(this::distance).thenComparing(MaterialNames::of))
            .toList();
    int at = keep ? place(chosen) : -1;
    if (at < 0 && !listed.isEmpty()) {
      at = 0;
    }
    table.show(rows(), at);
    choose(at < 0 ? "" : listed.get(at).id());
  }

  /** 0 for the id itself, 1 where a name or the id begins with what was typed, 2 elsewhere. */
  private int distance(Material material) {
    String typed = words.getText().strip().toLowerCase(Locale.ROOT);
    if (material.id().equals(typed)) {
      return 0;
    }
    return Stream.of(material.id(), MaterialNames.of(material), material.name())
            .anyMatch(name -> name.toLowerCase(Locale.ROOT).startsWith(typed))
        ? 1
        : 2;
  }

  private int place(String id) {
    return IntStream.range(0, listed.size())
        .filter(i -> listed.get(i).id().equals(id))
        .findFirst()
        .orElse(-1);
  }

  private boolean wanted(Material material) {
    boolean shown =
        switch (which.getSelectedIndex()) {
          case 1 -> used.contains(material.id());
          case 2 -> StudyMaterials.own(study, material.id());
          default -> true;
        };
    String said =
        Stream.of(
                Stream.of(MaterialNames.of(material), material.name(), material.id()),
                Stream.of(material.family(), MaterialNames.family(material)),
                Stream.of(MaterialNames.kinds(material)),
                material.kinds().stream(),
                material.aliases().stream())
            .flatMap(words -> words)
            .reduce("", (a, b) -> a + " " + b)
            .toLowerCase(Locale.ROOT);
    return shown
        && Stream.of(words.getText().strip().toLowerCase(Locale.ROOT).split("\\s+"))
            .allMatch(said::contains);
  }

  private ChartTable rows() {
    List<List<String>> rows = new ArrayList<>();
    for (Material material : listed) {
      rows.add(List.of(MaterialNames.of(material), material.id(), state(material.id())));
    }
    return new ChartTable(
        List.of(
            ChartTable.Column.words(Words.of("materials.material")),
            ChartTable.Column.words(Words.of("materials.id")),
            ChartTable.Column.words(Words.of("materials.here"))),
        rows);
  }

  private String state(String id) {
    String here = used.contains(id) ? Words.of("materials.state.used") : "";
    boolean own = StudyMaterials.own(study, id);
    String changed = own ? Words.of("materials.state.own") : "";
    return here.isEmpty() || changed.isEmpty()
        ? here + changed
        : Words.of("materials.state.both", here, changed);
  }
}
