package plyworth.workbench.engine.graph;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.structure.KindExpression;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.NeighbourRule;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;

/**
 * What a study allows, worked out the slow way: every combination of options is written down, and
 * every rule is checked on the finished list as its definition reads.
 */
public final class BruteForce {

  private final List<Position> positions;
  private final List<NeighbourRule> rules;
  private final MaterialLibrary materials;
  private final ProcessLibrary processes;
  private final Map<Layer, Set<String>> tags = new HashMap<>();
  private final Map<KindExpression, Map<Layer, Boolean>> meant = new HashMap<>();

  BruteForce(List<Position> positions, List<NeighbourRule> rules) {
    this(positions, rules, SmallLibrary.MATERIALS, SmallLibrary.PROCESSES);
  }

  /** Works with any materials and processes. */
  public BruteForce(
      List<Position> positions,
      List<NeighbourRule> rules,
      MaterialLibrary materials,
      ProcessLibrary processes) {
    this.positions = positions;
    this.rules = rules;
    this.materials = materials;
    this.processes = processes;
  }

  /** All allowed layer lists, each once. */
  public Set<List<Layer>> candidates() {
    Set<List<Layer>> allowed = new LinkedHashSet<>();
    for (List<Layer> list : lists(0)) {
      if (!list.isEmpty() && rules.stream().noneMatch(r -> broken(r, list))) {
        allowed.add(list);
      }
    }
    return allowed;
  }

  /** The allowed layer lists that can be spelled with that option at that position. */
  Set<List<Layer>> candidatesWith(int position, Option option) {
    List<Position> narrowed = new ArrayList<>(positions);
    narrowed.set(position, new Position("narrowed", List.of(option)));
    return new BruteForce(narrowed, rules, materials, processes).candidates();
  }

  /** Every way to spell an allowed layer list: the slots taken, with the layers they hold. */
  Map<List<Slot>, List<Layer>> spellings() {
    Map<List<Slot>, List<Layer>> spellings = new HashMap<>();
    spell(0, List.of(), List.of(), spellings);
    spellings
        .values()
        .removeIf(list -> list.isEmpty() || rules.stream().anyMatch(r -> broken(r, list)));
    return spellings;
  }

  private void spell(
      int position, List<Slot> slots, List<Layer> list, Map<List<Slot>, List<Layer>> spellings) {
    if (position == positions.size()) {
      spellings.put(slots, list);
      return;
    }
    List<Option> options = positions.get(position).options();
    for (int o = 0; o < options.size(); o++) {
      List<Slot> moreSlots = new ArrayList<>(slots);
      List<Layer> longer = new ArrayList<>(list);
      for (int i = 0; i < options.get(o).layers().size(); i++) {
        moreSlots.add(new Slot(position, o, i));
        longer.add(options.get(o).layers().get(i));
      }
      spell(position + 1, moreSlots, longer, spellings);
    }
  }

  private List<List<Layer>> lists(int position) {
    if (position == positions.size()) {
      return List.of(List.of());
    }
    List<List<Layer>> lists = new ArrayList<>();
    for (Option option : positions.get(position).options()) {
      for (List<Layer> rest : lists(position + 1)) {
        List<Layer> list = new ArrayList<>(option.layers());
        list.addAll(rest);
        lists.add(list);
      }
    }
    return lists;
  }

  boolean broken(NeighbourRule rule, List<Layer> list) {
    if (rule instanceof NeighbourRule.Neighbours r) {
      for (int i = 1; i < list.size(); i++) {
        if (is(list.get(i - 1), r.outer()) && is(list.get(i), r.inner())) {
          return true;
        }
      }
      return false;
    } else if (rule instanceof NeighbourRule.WebBondWeb r) {
      return badJoint(r, list);
    } else if (rule instanceof NeighbourRule.Face r) {
      return list.size() > 1 && is(list.get(0), r.outer()) && is(list.get(1), r.inner());
    } else if (rule instanceof NeighbourRule.Outermost r) {
      return !is(list.get(0), r.only());
    } else if (rule instanceof NeighbourRule.Innermost r) {
      return !is(list.get(list.size() - 1), r.only());
    } else if (rule instanceof NeighbourRule.AtMost r) {
      return list.stream().filter(l -> is(l, r.kind())).count() > r.n();
    }
    NeighbourRule.AtLeast r = (NeighbourRule.AtLeast) rule;
    return list.stream().filter(l -> is(l, r.kind())).count() < r.n();
  }

  private boolean badJoint(NeighbourRule.WebBondWeb rule, List<Layer> list) {
    for (int i = 0; i < list.size(); i++) {
      for (int j = i + 1; j < list.size(); j++) {
        List<Layer> between = list.subList(i + 1, j);
        if (web(list.get(i)) && web(list.get(j)) && between.stream().noneMatch(this::web)) {
          List<Layer> bonds = between.stream().filter(this::bond).toList();
          boolean joined =
              rule.bond() == null
                  ? bonds.isEmpty()
                  : bonds.stream().anyMatch(b -> is(b, rule.bond()));
          if (joined && is(list.get(i), rule.outer()) && is(list.get(j), rule.inner())) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private boolean web(Layer layer) {
    return tags(layer).contains("web") || tags(layer).contains("web-part");
  }

  private boolean bond(Layer layer) {
    return tags(layer).contains("bond");
  }

  private boolean is(Layer layer, KindExpression kind) {
    return meant
        .computeIfAbsent(kind, k -> new HashMap<>())
        .computeIfAbsent(layer, l -> isAnew(l, kind));
  }

  private boolean isAnew(Layer layer, KindExpression kind) {
    Set<String> tags = tags(layer);
    for (String alternative : kind.text().split(" \\| ")) {
      boolean all = true;
      for (String word : alternative.split(" ")) {
        all &= word.charAt(0) == '-' ? !tags.contains(word.substring(1)) : tags.contains(word);
      }
      if (all) {
        return true;
      }
    }
    return false;
  }

  private Set<String> tags(Layer layer) {
    return tags.computeIfAbsent(layer, this::tagsAnew);
  }

  private Set<String> tagsAnew(Layer layer) {
    var material = materials.require(layer.material());
    Set<String> tags = new HashSet<>(material.kinds());
    tags.add(material.id());
    tags.add(material.family());
    if (layer.process().isEmpty()) {
      tags.add("web");
    } else {
      tags.removeAll(Set.of("web", "film"));
      tags.add("@" + layer.process());
      ProcessRole role = processes.require(layer.process()).role();
      tags.add(role == ProcessRole.WEB_PART ? "web-part" : role.name().toLowerCase(Locale.ROOT));
    }
    return tags;
  }
}
