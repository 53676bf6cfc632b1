package plyworth.shared.route;

import java.util.Set;
import java.util.TreeSet;
import plyworth.shared.data.Choice;
import plyworth.shared.material.Material;
import plyworth.shared.structure.Layer;

/** The tags of a layer that rules speak of. */
public final class LayerKinds {

  private LayerKinds() {}

  /**
   * The kinds, family and id of its material, {@code @process} and the role of its process.
   *
   * <p>The tag {@code web} then means that the layer is unwound, so a resin that could be bought as
   * a film loses the material's {@code web} and {@code film} when a process puts it down.
   */
  public static Set<String> of(Layer layer, Material material, ProcessLibrary processes) {
    Set<String> tags = new TreeSet<>(material.kinds());
    tags.add(material.family());
    tags.add(material.id());
    ProcessRole role = processes.role(layer);
    if (role != ProcessRole.WEB) {
      tags.remove("web");
      tags.remove("film");
      tags.add("@" + layer.process());
    }
    tags.add(Choice.plain(role));
    return tags;
  }
}
