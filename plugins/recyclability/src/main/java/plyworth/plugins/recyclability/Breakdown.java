package plyworth.plugins.recyclability;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Explanation.Bars;
import plyworth.shared.scoring.Explanation.Note;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** The explanation of one structure. */
record Breakdown(Structure structure, Case scored, Judge judge, ScoringContext context) {

  Explanation explanation() {
    List<Section> sections = new ArrayList<>();
    sections.add(masses());
    sections.add(shares());
    sections.add(grade());
    judge.region().ifPresent(region -> addRegion(region, sections));
    sections.addAll(new Changes(structure, scored, judge, context).sections());
    for (String caution : List.of("proxy", "scale", "exempt", "food", "medical", "legal")) {
      sections.add(
          new Note(Text.of("caution." + caution), Text.of("caution." + caution + ".basis")));
    }
    return new Explanation(sections);
  }

  private Table masses() {
    List<List<Object>> rows = new ArrayList<>();
    for (Family family : present()) {
      rows.add(
          List.of(
              "family." + family.id(),
              scored.composition().of(family),
              100 * scored.composition().share(family)));
    }
    rows.add(List.of("word.total", scored.composition().total(), 100.0));
    return new Table(
        Text.of("masses.title"),
        columns("column.family", "column.grammage", "column.share"),
        rows,
        Text.of("masses.basis"));
  }

  private Bars shares() {
    List<Family> present = present();
    return new Bars(
        Text.of("shares.title"),
        "%",
        present.stream().map(f -> "family." + f.id()).toList(),
        present.stream().map(f -> 100 * scored.composition().share(f)).toList(),
        Text.of("masses.basis"));
  }

  private List<Family> present() {
    Composition composition = scored.composition();
    return Stream.of(Family.values())
        .filter(f -> composition.of(f) > 0)
        .sorted(Comparator.comparingDouble(f -> -composition.of(f)))
        .toList();
  }

  private Table grade() {
    List<List<Object>> rows = new ArrayList<>();
    rows.add(List.of("word.route", Route.of(scored, judge.proxy()).key()));
    rows.add(percent("word.target", Measure.TARGET));
    rows.add(percent("word.strict", Measure.RECYCLABLE));
    rows.add(percent("word.tolerant", Measure.RECYCLABLE_TOLERANT));
    judge
        .region()
        .ifPresent(
            region -> {
              rows.add(
                  List.of("word.verdict-strict", region.classVerdict(scored.figures()).words()));
              rows.add(
                  List.of(
                      "word.verdict-tolerant",
                      region.classVerdict(scored.tolerant().figures()).words()));
            });
    rows.add(percent("word.second", Measure.SECOND_MATERIAL));
    if (scored.has(Measure.FIBRE)) {
      rows.add(List.of("word.sides", scored.of(Measure.POLYMER_SIDES)));
      rows.add(percent("word.yield", Measure.FIBRE_YIELD));
      rows.add(percent("word.reject", Measure.REJECT));
    }
    return new Table(
        Text.of("grade.title"),
        columns("column.figure", "column.value"),
        rows,
        Text.of("grade.basis"));
  }

  private List<Object> percent(String key, Measure measure) {
    return List.of(key, 100 * scored.of(measure));
  }

  private void addRegion(Region region, List<Section> sections) {
    List<List<Object>> rows = new ArrayList<>();
    List<RuleSet> sets = new ArrayList<>(region.sets());
    sets.add(judge.proxy().fibre());
    sets.add(judge.proxy().film());
    for (RuleSet set : sets) {
      rows.add(row(set.decide(scored.figures())));
    }
    sections.add(
        new Table(
            Text.of("verdicts.title"),
            columns(
                "column.set",
                "column.verdict",
                "column.rule",
                "column.confidence",
                "column.edition",
                "column.source",
                "column.settled"),
            rows,
            Text.of("verdicts.basis")));
    if (!region.fees().isEmpty()) {
      sections.add(fees(region));
    }
  }

  private List<Object> row(Verdict verdict) {
    String words =
        verdict.open().isEmpty()
            ? verdict.words()
            : verdict.words()
                + " (provisional, missing: "
                + String.join(", ", verdict.open())
                + ")";
    return List.of(
        verdict.set().title() + " (" + verdict.set().basis() + ")",
        words,
        verdict.rule().map(Rule::id).orElse(""),
        verdict.rule().map(r -> r.confidence().words()).orElse(""),
        verdict.set().edition(),
        verdict.rule().map(Rule::source).orElse(""),
        verdict.inScope() ? verdict.set().settledBy() : "");
  }

  private Table fees(Region region) {
    List<List<Object>> rows = new ArrayList<>();
    for (FeeTable fee : region.fees()) {
      Verdict category = region.set(fee.set()).orElseThrow().decide(scored.figures());
      rows.add(
          List.of(
              fee.title(),
              charged(fee, category),
              fee.currency(),
              fee.status(),
              category.words(),
              fee.source() + " (" + fee.confidence().words() + ")"));
    }
    return new Table(
        Text.of("fees.title"),
        columns(
            "column.scheme",
            "column.fee",
            "column.currency",
            "column.status",
            "column.category",
            "column.source"),
        rows,
        Text.of("fees.basis"));
  }

  private Object charged(FeeTable fee, Verdict category) {
    boolean split = !Double.isNaN(fee.plastic());
    return category.inScope() || split
        ? fee.per1000m2(scored.composition(), category)
        : "word.not-charged";
  }

  private static List<Text> columns(String... keys) {
    return Stream.of(keys).map(Text::of).toList();
  }
}
