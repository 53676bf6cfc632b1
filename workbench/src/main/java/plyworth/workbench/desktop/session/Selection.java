package plyworth.workbench.desktop.session;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import plyworth.shared.quantity.Range;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.word.Reason;

/** The selected structure, and what is known of it: first what is quick, then the ranges. */
public final class Selection {

  private final Background details = new Background();
  private final Background ranges = new Background();
  private final Runnable changed;
  private final Consumer<String> failed;
  private Structure structure;
  private Detail detail;
  private Detail ranging;

  Selection(Runnable changed, Consumer<String> failed) {
    this.changed = changed;
    this.failed = failed;
  }

  /** Which structure is selected. */
  public Optional<Structure> structure() {
    return Optional.ofNullable(structure);
  }

  /** The structure selected last of which anything is known, with what is known. */
  public Optional<Detail> detail() {
    return Optional.ofNullable(detail);
  }

  void clear() {
    details.cancel();
    ranges.cancel();
    structure = null;
    detail = null;
    ranging = null;
  }

  /** Works nothing out from now on. */
  void end() {
    details.end();
    ranges.end();
  }

  /** Selects a structure in a ranking and works out everything about it. */
  void select(Ranked ranked, Structure wanted) {
    structure = wanted;
    Optional<Detail> before = detail().filter(d -> d.isOf(ranked, wanted));
    details.run(
        stale -> before.map(d -> d.in(ranked)).orElseGet(() -> Detail.of(ranked, wanted)),
        this::show,
        failed);
  }

  private void show(Detail known) {
    detail = known;
    boolean underWay = ranging != null && known.isOf(ranging.ranked(), ranging.structure());
    if (known.ranges().isEmpty() && !underWay) {
      ranging = known;
      ranges.run(
          known::workOutRanges,
          result -> add(known, result),
          reason -> {
            ranging = null;
            failed.accept(Reason.of(reason));
          });
    }
    changed.run();
  }

  private void add(Detail asked, Map<String, Range> result) {
    ranging = null;
    if (detail != null && detail.isOf(asked.ranked(), asked.structure())) {
      detail = detail.with(result);
      changed.run();
    }
  }
}
