package plyworth.plugins.recyclability;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonText;
import plyworth.shared.data.Place;
import plyworth.shared.data.Resources;

/**
 * The rule sets and fees of a market region.
 *
 * @param id region as the brief writes it
 * @param sets everything that is shown
 * @param classSets the sets that give the class; the first in whose scope a structure lies decides
 * @param access the set that bars from the market, by class and year; empty when the region has
 *     none
 * @param fees public fee tables
 */
record Region(
    String id,
    List<RuleSet> sets,
    List<RuleSet> classSets,
    Optional<RuleSet> access,
    List<FeeTable> fees) {

  private static final Map<String, Region> REGIONS = readAll();

  /** The region of that name, if its rules are carried. */
  static Optional<Region> named(String id) {
    return Optional.ofNullable(REGIONS.get(id));
  }

  /** The regions whose rules are carried. */
  static List<String> known() {
    return List.copyOf(REGIONS.keySet());
  }

  /** The class of a structure; 0 where no set speaks of it: out of scope is not a pass. */
  int classOf(double[] figures) {
    for (RuleSet set : classSets) {
      if (set.inScope(figures)) {
        return set.classOf(figures);
      }
    }
    return 0;
  }

  /** Writes the bounds of the class. */
  void classBounds(double[] low, double[] high) {
    double[] span = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
    boolean decided = false;
    for (RuleSet set : classSets) {
      if (!decided && Rule.allMay(set.scope(), low, high)) {
        set.classBounds(low, high, span);
        decided = Rule.allMust(set.scope(), low, high);
      }
    }
    if (!decided) {
      RuleSet.widen(span, 0);
    }
    low[Measure.CLASS.ordinal()] = span[0];
    high[Measure.CLASS.ordinal()] = span[1];
  }

  /** The verdict behind the class; that of the first set when none speaks of the structure. */
  Verdict classVerdict(double[] figures) {
    return classSets.stream()
        .filter(s -> s.inScope(figures))
        .findFirst()
        .orElse(classSets.get(0))
        .decide(figures);
  }

  /** The set of that id, if the region has it. */
  Optional<RuleSet> set(String setId) {
    return sets.stream().filter(s -> s.id().equals(setId)).findFirst();
  }

  private static Map<String, Region> readAll() {
    return new TreeMap<>(
        Fields.read(json("regions.json"), top -> top.map("regions", Region::declared))
            .entrySet()
            .stream()
            .collect(Collectors.toMap(Map.Entry::getKey, e -> e.getValue().build(e.getKey()))));
  }

  private static Declaration declared(Json json) {
    return Fields.read(
        json,
        f -> new Declaration(f.texts("class"), f.text("access", ""), f.texts("files"), f.place()));
  }

  private static Json json(String file) {
    return JsonText.read(Resources.text(Region.class, file), file);
  }

  private record Declaration(
      List<String> classSets, String access, List<String> files, Place place) {

    Region build(String id) {
      List<RuleSet> sets = new ArrayList<>();
      List<FeeTable> fees = new ArrayList<>();
      for (String file : files) {
        Fields.read(
            json(file),
            f -> {
              sets.addAll(f.objects("sets", RuleSet::read));
              return fees.addAll(f.objects("fees", FeeTable::read));
            });
      }
      return new Region(
          id,
          List.copyOf(sets),
          classSets.stream().map(s -> find(sets, s)).toList(),
          access.isEmpty() ? Optional.empty() : Optional.of(find(sets, access)),
          List.copyOf(fees));
    }

    private RuleSet find(List<RuleSet> sets, String id) {
      return sets.stream()
          .filter(s -> s.id().equals(id))
          .findFirst()
          .orElseThrow(
              () -> new DataException(place, "the rule set " + id + " is missing", "Add it."));
    }
  }
}
