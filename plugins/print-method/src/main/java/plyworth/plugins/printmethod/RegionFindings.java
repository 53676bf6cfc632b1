package plyworth.plugins.printmethod;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Finding.Level;
import plyworth.shared.scoring.ScoringContext;

/** What the rules of the market's region say of the inks; information, not a verdict. */
record RegionFindings(PrintJob job, ScoringContext context) {

  /** Remarks for the region of the brief; none for a region without rules here. */
  List<Finding> all() {
    List<Finding> found = new ArrayList<>();
    for (LayDown down : job.prints()) {
      switch (context.brief().market().region()) {
        case "eu" -> european(down, found);
        case "us" -> american(down, found);
        case "cn" -> chinese(down, found);
        default -> {}
      }
    }
    return found;
  }

  private void european(LayDown down, List<Finding> found) {
    double perSolids = down.emitted(context.parameter(Parameters.RETAINED)) / down.dry();
    found.add(
        Findings.finding(
            Level.INFORMS,
            "eu-emission-per-solids",
            "Implementing Decision (EU) 2020/2009; figures from memory",
            down.by().process().id(),
            perSolids));
  }

  private void american(LayDown down, List<Finding> found) {
    MakeUp ink = down.by().makeUp();
    found.add(
        Findings.finding(
            Level.INFORMS,
            "us-guideline",
            "US EPA control techniques guideline for flexible package printing, 2006; from memory",
            down.by().process().id(),
            ink.solventPerSolids(),
            ink.solvent(),
            100 * SolventGuideline.controlNeeded(ink)));
  }

  private void chinese(LayDown down, List<Finding> found) {
    String id = down.by().process().id();
    String method = id.replaceFirst("-.*", "");
    boolean absorbent = job.surfaces().stream().anyMatch(p -> p.surface().face().equals("paper"));
    double limit = InkLimits.limit(down.by().kind(), method, absorbent);
    if (Double.isNaN(limit)) {
      return;
    }
    boolean thinned = down.by().kind() == InkKind.SOLVENT;
    double thinner = thinned ? context.parameter(Parameters.THINNER) : 0;
    double percent = 100 * down.by().makeUp().asSupplied(thinner).solvent();
    found.add(
        Findings.finding(
            percent > limit ? Level.WARNS : Level.INFORMS,
            "cn-ink-limit",
            "GB 38507-2020, in force since 1 April 2021, read in a published summary",
            id,
            percent,
            limit));
  }
}
