package plyworth.plugins.recyclability;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Market;
import plyworth.shared.brief.Product;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Finding.Level;
import plyworth.shared.scoring.Text;

/**
 * The remarks on one structure.
 *
 * <p>Foil in paper warns and does not block: it shuts the ordinary fibre stream, but special mills
 * take foil laminates of much paper, and whether a bar from the market follows is a matter of dates
 * and of criteria that do not exist yet.
 */
record Findings(Case scored, Judge judge, Brief brief) {

  private static final String PRACTICE = "common practice";

  private static final String EUROPEAN_TEST =
      "Cepi laboratory method version 2, October 2022; European evaluation protocol, January 2025";

  static Finding compositionUnknown(String material) {
    return new Finding(
        Level.WARNS,
        "composition-unknown",
        Text.of("finding.composition-unknown", material),
        PRACTICE);
  }

  /** All of them. */
  List<Finding> all() {
    List<Finding> all = new ArrayList<>();
    judge.region().ifPresent(region -> addRegion(region, all));
    addStreams(all);
    addContact(all);
    return all;
  }

  private void addRegion(Region region, List<Finding> all) {
    Verdict verdict = region.classVerdict(scored.figures());
    double strict = 100 * scored.of(Measure.RECYCLABLE);
    double tolerant = 100 * scored.of(Measure.RECYCLABLE_TOLERANT);
    all.add(
        new Finding(
            scored.of(Measure.CLASS) == 0 ? Level.WARNS : Level.INFORMS,
            verdict.decidedBy(),
            verdict.inScope()
                ? Text.of("finding.class", verdict.set().title(), verdict.words(), strict, tolerant)
                : Text.of("finding.out-of-scope", verdict.set().title()),
            verdict.source()));
    Verdict other = region.classVerdict(scored.tolerant().figures());
    if (!other.words().equals(verdict.words())) {
      all.add(
          new Finding(
              Level.INFORMS,
              "strict-and-tolerant-differ",
              Text.of("finding.differ", verdict.words(), other.words()),
              verdict.set().edition()));
    }
    region.access().ifPresent(access -> addAccess(access.decide(scored.figures()), all));
  }

  private void addAccess(Verdict access, List<Finding> all) {
    if (access.rule().isPresent()) {
      Market market = brief.market();
      all.add(
          new Finding(
              judge.enforce() ? Level.BLOCKS : Level.WARNS,
              "market-access",
              Text.of(
                  "finding.market-access",
                  access.words(),
                  Integer.toString(market.launchYear()),
                  Integer.toString(market.endYear()),
                  access.decidedBy()),
              access.source()));
    }
  }

  private void addStreams(List<Finding> all) {
    RuleSet out =
        scored.of(Measure.PAPER_LEADS) == 1 ? judge.proxy().fibre() : judge.proxy().film();
    if (out.inScope(scored.figures())) {
      for (Rule rule : out.firing(scored.figures())) {
        all.add(
            new Finding(
                Level.WARNS,
                rule.id(),
                Text.of("finding.disqualified", rule.verdict()),
                rule.source() + " (" + rule.confidence().words() + "); " + out.edition()));
      }
    } else {
      warn(all, "neither-paper-nor-plastic-leads", PRACTICE);
    }
    if (scored.has(Measure.FIBRE)) {
      addFibre(all);
    }
  }

  private void addFibre(List<Finding> all) {
    if (scored.has(Measure.FOIL)) {
      warn(
          all,
          "fibre-stream-blocked",
          "common practice; recyclers’ guidance table for PE film, name withheld; recyclability table"
              + " of the French committee on composite paper packaging");
    }
    if (scored.of(Measure.POLYMER_SIDES) >= 2) {
      warn(
          all,
          "polymer-on-both-sides",
          "packaging news, February 2019, summary of the UK mills’ guideline, name withheld; common practice");
    }
    if (scored.composition().of(Family.WAX) > 0) {
      warn(
          all,
          "wax-disturbs-pulping",
          "packaging news, February 2019, name withheld; common practice");
    }
    all.add(
        new Finding(
            Level.INFORMS,
            "laboratory-test-decides",
            Text.of("finding.laboratory-test-decides"),
            EUROPEAN_TEST));
  }

  private void addContact(List<Finding> all) {
    if (!scored.has(Measure.FOIL)) {
      all.add(
          new Finding(
              Level.INFORMS,
              "functional-barrier-gone",
              Text.of("finding.functional-barrier-gone"),
              "Regulation (EU) 10/2011, Articles 13 and 14 (articles from memory; 0.01 mg/kg read"
                  + " in the predecessor text, legislation.gov.uk wsi/2008/1237 regulation 11); 21"
                  + " CFR 177.1390"));
    }
    boolean flammable =
        brief.product().form() == Product.Form.WIPE
            || brief.product().contents().contains("alcohol");
    if (flammable) {
      all.add(
          new Finding(
              Level.INFORMS,
              "flammable-contents",
              Text.of("finding.flammable-contents"),
              "training firm’s page of 17 November 2020, name withheld (UN 3175); packet exception from memory"));
    }
  }

  private static void warn(List<Finding> all, String rule, String source) {
    all.add(new Finding(Level.WARNS, rule, Text.of("finding." + rule), source));
  }
}
