package plyworth.workbench.command.robustness;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.robustness.turn.Duel;
import plyworth.workbench.robustness.turn.Input;
import plyworth.workbench.robustness.turn.Sweep;
import plyworth.workbench.robustness.turn.Turn;
import plyworth.workbench.robustness.turn.Turns;

/** What would have to be true, as JSON, version 1 of the interface. */
final class TurnJson {

  private TurnJson() {}

  static Json of(TurnCommand.Answer answer) {
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth turn"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(answer.ranked().study().title()));
    root.put("weighting", Json.of(answer.ranked().study().weighting()));
    root.put("ahead", Json.of(answer.duel().one().toString()));
    root.put("behind", Json.of(answer.duel().other().toString()));
    root.put("lead", lead(answer.lead()));
    root.put("complete", Json.of(answer.sweep().map(Sweep::complete).orElse(true)));
    root.put(
        "inputs",
        Json.of(
            answer
                .sweep()
                .map(sweep -> sweep.turning().stream().map(TurnJson::input).toList())
                .orElseGet(() -> answer.turns().stream().map(TurnJson::input).toList())));
    answer.sweep().ifPresent(sweep -> root.put("tried", Json.of(tried(sweep))));
    answer.there().ifPresent(there -> root.put("leaderBeyond", leader(there)));
    return Json.of(root);
  }

  private static double tried(Sweep sweep) {
    return sweep.turning().size() + sweep.others().size();
  }

  private static Json leader(Ranked there) {
    return Json.of(
        there.best().isEmpty() ? null : there.structure(there.best().get(0).path()).toString());
  }

  private static Json input(Turns turns) {
    Input input = turns.input();
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("input", Json.of(input.name()));
    entries.put("kind", Json.of(Choice.plain(input.kind())));
    entries.put("unit", Json.of(input.unit()));
    entries.put("present", number(input.present()));
    entries.put("low", number(input.low()));
    entries.put("high", number(input.high()));
    entries.put("lowest", number(input.lowest()));
    entries.put("highest", number(input.highest()));
    Optional<Turn> nearest = turns.nearest();
    entries.put("turn", number(nearest.map(Turn::figure).orElse(Double.NaN)));
    entries.put(
        "factor", number(nearest.map(turn -> turn.figure() / input.present()).orElse(Double.NaN)));
    entries.put("turns", Json.of(turns.turns().stream().map(t -> turn(input, t)).toList()));
    entries.put("closest", number(turns.closest()));
    entries.put("closestLead", lead(turns.closestLead()));
    entries.put("from", number(turns.from()));
    entries.put("to", number(turns.to()));
    entries.put("points", Json.of(turns.points()));
    return Json.of(entries);
  }

  private static Json turn(Input input, Turn turn) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("figure", number(turn.figure()));
    entries.put("overtakes", Json.of(turn.overtakes()));
    entries.put("step", Json.of(turn.step()));
    entries.put("withinRange", Json.of(input.credible(turn.figure())));
    return Json.of(entries);
  }

  /** Unknown where the one behind is not ranked. */
  private static Json lead(double lead) {
    return number(lead >= Duel.OUT ? Double.NaN : lead);
  }

  private static Json number(double figure) {
    return Json.of(Digits.exported(figure));
  }
}
