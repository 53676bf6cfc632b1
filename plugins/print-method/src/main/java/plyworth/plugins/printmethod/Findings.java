package plyworth.plugins.printmethod;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Finding.Level;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;

/** The remarks on one print job. */
record Findings(PrintJob job, Contributions contributions) {

  private static final String PRACTICE = "common practice";

  /** Share of the lower flammable limit that a dryer may reach without monitoring (from memory). */
  private static final double UNMONITORED = 0.25;

  /** Bare foil up to this gauge breaks easily on press, µm (common practice). */
  private static final double THIN_FOIL = 9;

  /** All remarks; none on an unprinted structure without liquids. */
  List<Finding> all() {
    List<Finding> found = new ArrayList<>();
    job.surfaces().forEach(p -> ofGates(p, found));
    if (job.printOnProductSide()) {
      found.add(
          finding(Level.BLOCKS, Criteria.PRODUCT_SIDE, PRACTICE + ": print migrates into food"));
    }
    if (job.printed()) {
      ofStructure(found);
      job.prints().forEach(d -> ofLayDown(d, found));
      found.addAll(new RegionFindings(job, context()).all());
    }
    ofSolvent(found);
    return List.copyOf(found);
  }

  private void ofGates(Printed printed, List<Finding> found) {
    for (Gate gate : contributions.gates().of(printed)) {
      if (gate.verdict() == Verdict.NONE) {
        found.add(new Finding(Level.BLOCKS, Criteria.UNSUITABLE, gate.text(), gate.source()));
      } else if (gate.verdict() == Verdict.CONDITIONAL) {
        found.add(new Finding(Level.WARNS, gate.id(), gate.text(), gate.source()));
      }
    }
    if (printed.surface().face().equals("foil") && context().gaugeUm(printed.web()) <= THIN_FOIL) {
      found.add(finding(Level.WARNS, "thin-foil", PRACTICE, context().gaugeUm(printed.web())));
    }
    if (printed.reverse() && context().kinds(printed.web()).contains("opaque")) {
      found.add(finding(Level.WARNS, "print-hidden", PRACTICE, printed.web().material()));
    }
  }

  private void ofStructure(List<Finding> found) {
    if (context().kinds(job.structure().outermost()).contains("ink")) {
      found.add(finding(Level.INFORMS, "jaws-touch-print", PRACTICE));
    }
    boolean foil =
        job.structure().layers().stream().anyMatch(l -> context().kinds(l).contains("foil"));
    String source = "Regulation (EC) 2023/2006, annex on printing inks, from memory; " + PRACTICE;
    found.add(
        foil
            ? finding(Level.INFORMS, "set-off", source)
            : finding(Level.WARNS, "through-migration", source));
  }

  private void ofLayDown(LayDown down, List<Finding> found) {
    double coverage = Double.isNaN(down.layer().coverage()) ? 1 : down.layer().coverage();
    double inkings =
        down.by().method().cells().inkings(down.dry(), down.by().makeUp().solids(), coverage);
    double decks = context().figure(down.by().process(), "colours");
    if (Math.ceil(inkings) > decks) {
      found.add(
          finding(
              Level.WARNS,
              "lay-down-out-of-reach",
              "V·T·ρ·s of engraved cells; largest usual cells from memory",
              down.by().process().id(),
              down.dry(),
              Math.ceil(inkings),
              decks));
    }
    if (down.layer().material().matches("ink-(white-)?nc")) {
      found.add(finding(Level.INFORMS, "nitrocellulose", "from memory", down.layer().material()));
    }
    if (down.by().kind() == InkKind.SOLVENT && down.solvent() > 0) {
      ofSolventPrint(down, found);
    }
  }

  private void ofSolventPrint(LayDown down, List<Finding> found) {
    Blend blend = down.by().blend();
    double share = contributions.plant().drying().concentration() / blend.lflGrams();
    if (share > UNMONITORED) {
      found.add(
          finding(
              Level.WARNS,
              "explosion-limit",
              "IEC 60079-20-1:2010 for the limits; shares from memory; the local code decides",
              100 * share,
              blend.plain()));
    }
    WetProcess flexo = contributions.processes().get("flexo-water");
    if (flexo != null) {
      double uncontrolled = contributions.layDown(down.layer(), flexo).solvent();
      found.add(
          finding(
              Level.INFORMS,
              "crossover",
              "mass balance: emission = input · (1 − K·D)",
              uncontrolled,
              100 * Abatement.tie(down.solvent(), uncontrolled),
              100 * down.by().abatement().overall()));
    }
  }

  private void ofSolvent(List<Finding> found) {
    double bonding =
        job.layDowns().stream().filter(d -> !d.by().print()).mapToDouble(LayDown::solvent).sum();
    if (bonding > 0) {
      found.add(finding(Level.INFORMS, "solvent-of-adhesive", "mass balance", bonding));
    }
    boolean solvent = job.layDowns().stream().anyMatch(d -> d.by().kind() == InkKind.SOLVENT);
    if (solvent) {
      found.add(finding(Level.INFORMS, "solvent-handling", PRACTICE));
    }
  }

  private ScoringContext context() {
    return contributions.plant().context();
  }

  static Finding finding(Level level, String rule, String source, Object... arguments) {
    return new Finding(level, rule, Text.of("finding." + rule, arguments), source);
  }
}
