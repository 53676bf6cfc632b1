package plyworth.workbench.command.evidence;

import java.util.LinkedHashMap;
import java.util.Map;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Json;
import plyworth.shared.quantity.Range;
import plyworth.workbench.host.Digits;
import plyworth.workbench.robustness.turn.OpenQuestions;

/** What is worth measuring, as JSON, version 1 of the interface. */
final class QuestionsJson {

  private QuestionsJson() {}

  static Json of(QuestionsCommand.Answer answer) {
    OpenQuestions open = answer.questions();
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth questions"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(answer.ranked().study().title()));
    root.put("weighting", Json.of(answer.ranked().study().weighting()));
    root.put("leader", Json.of(open.leader().toString()));
    root.put("rivals", Json.of(open.rivals().stream().map(r -> Json.of(r.toString())).toList()));
    root.put("complete", Json.of(open.complete()));
    root.put("unknown", Json.of(open.unknown().stream().map(QuestionsJson::unknown).toList()));
    root.put(
        "questions",
        Json.of(
            open.questions().stream().limit(answer.top()).map(QuestionsJson::question).toList()));
    return Json.of(root);
  }

  private static Json unknown(OpenQuestions.Unknown unknown) {
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("material", Json.of(unknown.material()));
    entries.put("property", Json.of(unknown.property()));
    return Json.of(entries);
  }

  private static Json question(OpenQuestions.Question question) {
    Range range = question.origin().range();
    Map<String, Json> entries = new LinkedHashMap<>();
    entries.put("material", Json.of(question.material()));
    entries.put("property", Json.of(question.property().id()));
    entries.put("unit", Json.of(question.property().unit()));
    entries.put("low", number(range.low()));
    entries.put("typical", number(range.typical()));
    entries.put("high", number(range.high()));
    entries.put("kind", Json.of(Choice.plain(question.origin().kind())));
    entries.put("source", Json.of(question.origin().source()));
    entries.put("rival", Json.of(question.rival().toString()));
    entries.put("lead", number(question.lead()));
    entries.put("least", number(question.least()));
    return Json.of(entries);
  }

  private static Json number(double figure) {
    return Json.of(Digits.exported(figure));
  }
}
