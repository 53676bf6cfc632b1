package plyworth.workbench.desktop.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.ClimateZones;
import plyworth.shared.brief.Handling;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.Words;

/** Shelf life, climate and handling in the form. */
final class StorageEntries {

  private static final int MONTHS = 12;

  /** Every month is a twelfth of 365 days. */
  private static final double MONTH_DAYS = 365.0 / MONTHS;

  private StorageEntries() {}

  static void write(Brief brief, BriefDraft.Writing draft) {
    draft
        .put(BriefField.SHELF_LIFE, brief.shelfLifeDays())
        .put(BriefField.HANDLING, brief.handling());
    Optional<String> zone = ClimateZones.of(brief.climate());
    if (zone.isPresent()) {
      draft.put(BriefField.CLIMATE, "zone").put(BriefField.ZONE, zone.get());
    } else {
      draft.put(BriefField.CLIMATE_NAME, brief.climate().name());
      spellOut(brief.climate(), draft);
    }
  }

  private static void spellOut(Climate climate, BriefDraft.Writing draft) {
    Season first = climate.seasons().get(0);
    if (climate.equals(
        new Climate(climate.name(), first.temperatureC(), first.humidityPercent()))) {
      draft
          .put(BriefField.CLIMATE, "constant")
          .put(BriefField.TEMPERATURE, first.temperatureC())
          .put(BriefField.HUMIDITY, first.humidityPercent());
    } else if (climate.seasons().size() == MONTHS
        && climate.seasons().stream().allMatch(s -> s.days() == MONTH_DAYS)) {
      draft.put(BriefField.CLIMATE, "months").put(BriefField.MONTHS, lines(climate, false));
    } else {
      draft.put(BriefField.CLIMATE, "seasons").put(BriefField.SEASONS, lines(climate, true));
    }
  }

  private static String lines(Climate climate, boolean withDays) {
    return climate.seasons().stream()
        .map(s -> (withDays ? Measure.DAYS.write(s.days()) + ", " : "") + spelled(s))
        .collect(Collectors.joining("\n"));
  }

  private static String spelled(Season season) {
    return Measure.TEMPERATURE.write(season.temperatureC())
        + ", "
        + Measure.PERCENT.write(season.humidityPercent());
  }

  static Handling handling(BriefAnswers answers) {
    return answers.choice(BriefField.HANDLING, Handling.values());
  }

  static Optional<Climate> climate(BriefAnswers answers) {
    return answers.made(
        BriefField.CLIMATE,
        () ->
            switch (answers.text(BriefField.CLIMATE)) {
              case "zone" -> ClimateZones.require(answers.text(BriefField.ZONE));
              case "constant" ->
                  new Climate(
                      answers.words(BriefField.CLIMATE_NAME),
                      answers.figure(BriefField.TEMPERATURE),
                      answers.figure(BriefField.HUMIDITY));
              case "months" -> new Climate(answers.words(BriefField.CLIMATE_NAME), months(answers));
              default ->
                  new Climate(
                      answers.words(BriefField.CLIMATE_NAME),
                      seasons(answers, BriefField.SEASONS, true));
            });
  }

  private static List<Season> months(BriefAnswers answers) {
    List<String> lines = answers.text(BriefField.MONTHS).lines().toList();
    List<Season> months = seasons(answers, BriefField.MONTHS, false);
    for (int i = 0; i < Math.min(lines.size(), MONTHS); i++) {
      if (lines.get(i).isBlank()) {
        answers.fault(BriefField.MONTHS, Words.of("form.month.empty", i + 1));
      }
    }
    if (months.size() != MONTHS) {
      answers.fault(BriefField.MONTHS, Words.of("form.months.count", months.size()));
    }
    return months;
  }

  private static List<Season> seasons(BriefAnswers answers, BriefField field, boolean withDays) {
    List<Season> seasons = new ArrayList<>();
    int number = 0;
    for (String line : answers.text(field).split("\n")) {
      number++;
      if (!line.isBlank()) {
        try {
          seasons.add(season(line, withDays));
        } catch (WrongEntry | IllegalArgumentException e) {
          answers.fault(
              field,
              Words.of(
                  withDays ? "form.line" : "form.month.wrong", number, Reason.of(e.getMessage())));
          seasons.add(new Season(1, 0, 0));
        }
      }
    }
    if (seasons.isEmpty() && withDays) {
      answers.fault(field, Words.of("form.seasons.none"));
    }
    return seasons;
  }

  /** Figures parted by tabs, as sheets copy them, else by commas or semicolons. */
  static List<String> cells(String line) {
    return line.contains("\t")
        ? Stream.of(line.split("\t", -1)).map(String::strip).toList()
        : List.of(line.strip().split("\\s*[,;，；]\\s*"));
  }

  private static Season season(String line, boolean withDays) {
    List<String> cells = cells(line);
    int wanted = withDays ? 3 : 2;
    if (cells.size() != wanted) {
      throw new WrongEntry(Words.of("form.line.cells", wanted, cells.size()));
    }
    double days =
        withDays
            ? BriefAnswers.within(BriefField.SHELF_LIFE.ask(), Measure.DAYS.read(cells.get(0)))
            : MONTH_DAYS;
    return new Season(
        days,
        within(BriefField.TEMPERATURE, cells.get(wanted - 2)),
        within(BriefField.HUMIDITY, cells.get(wanted - 1)));
  }

  private static double within(BriefField field, String cell) {
    try {
      if (cell.isEmpty()) {
        throw new WrongEntry(Words.of("entry.needed", BriefAnswers.example(field.ask())));
      }
      return BriefAnswers.within(field.ask(), field.ask().measure().read(cell));
    } catch (WrongEntry e) {
      throw new WrongEntry(Words.of("form.of", field.title(), e.getMessage()));
    }
  }
}
