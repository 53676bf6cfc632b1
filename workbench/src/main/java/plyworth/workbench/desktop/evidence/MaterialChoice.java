package plyworth.workbench.desktop.evidence;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.structure.Layer;
import plyworth.shared.study.Study;
import plyworth.workbench.desktop.part.EntryForm;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.host.PluginCatalog;

/**
 * A choice of a property of a material. Materials that the study uses stand first; properties are
 * those that the material carries and those that some plugin reads.
 */
final class MaterialChoice {

  private final MaterialLibrary library;
  private final Map<String, PropertyDefinition> read = new TreeMap<>();
  private final List<Material> materials;
  private final JComboBox<String> material = new JComboBox<>();
  private final JComboBox<String> property = new JComboBox<>();
  private List<String> properties = List.of();

  MaterialChoice(Study study, PluginCatalog catalog) {
    library = study.materialsBefore();
    catalog.plugins().stream()
        .flatMap(plugin -> plugin.plugin().properties().stream())
        .forEach(definition -> read.putIfAbsent(definition.id(), definition));
    materials = usedFirst(study);
    material.setName("reading-material");
    property.setName("reading-property");
    materials.forEach(each -> material.addItem(MaterialNames.of(each) + " (" + each.id() + ")"));
    material.addActionListener(event -> offer());
    offer();
  }

  private List<Material> usedFirst(Study study) {
    Map<String, Material> ordered = new LinkedHashMap<>();
    Stream.concat(
            study.positions().stream()
                .flatMap(position -> position.options().stream())
                .flatMap(option -> option.layers().stream()),
            study.baseline().layers().stream())
        .map(Layer::material)
        .map(library::require)
        .sorted(Comparator.comparing(MaterialNames::of))
        .forEach(each -> ordered.put(each.id(), each));
    library.all().stream()
        .sorted(Comparator.comparing(MaterialNames::of))
        .forEach(each -> ordered.putIfAbsent(each.id(), each));
    return List.copyOf(ordered.values());
  }

  /** Offers the properties of the chosen material; the chosen one stays where it has it. */
  private void offer() {
    String before = property.getItemCount() == 0 ? "" : property();
    Set<String> offered = new LinkedHashSet<>(material().properties().keySet());
    offered.addAll(read.keySet());
    properties = List.copyOf(offered);
    property.removeAllItems();
    properties.forEach(property::addItem);
    property.setSelectedIndex(Math.max(0, properties.indexOf(before)));
  }

  void addTo(EntryForm form, Runnable changed) {
    form.add("reading.material", material, null);
    form.add("reading.property", property, null);
    property.addActionListener(
        event -> {
          if (property.getSelectedIndex() >= 0) {
            changed.run();
          }
        });
  }

  JComponent field() {
    return material;
  }

  Material material() {
    return materials.get(material.getSelectedIndex());
  }

  String property() {
    return properties.get(Math.max(0, property.getSelectedIndex()));
  }

  /** The chosen property as the material carries it before any correction. */
  Optional<Property> carried() {
    return material().property(property());
  }

  /** Unit of the chosen property. */
  String unit() {
    return carried().map(Property::unit).orElseGet(() -> read.get(property()).unit());
  }

  /** What a table of the chosen property runs along. */
  PropertyDefinition.Along along() {
    return Optional.ofNullable(read.get(property()))
        .map(PropertyDefinition::along)
        .orElse(PropertyDefinition.Along.NOTHING);
  }

  /** Chooses a property of a material. */
  void choose(String materialId, String propertyId) {
    material.setSelectedIndex(materials.stream().map(Material::id).toList().indexOf(materialId));
    property.setSelectedIndex(properties.indexOf(propertyId));
  }
}
