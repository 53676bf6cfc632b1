package plyworth.shared.store;

import java.util.List;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.ClimateZones;
import plyworth.shared.data.DataException;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;

/** The climate: a zone, a constant climate, twelve months, or seasons. */
final class ClimateCodec {

  private static final int MONTHS = 12;

  /** Every month is a twelfth of 365 days, 30.4 days. */
  private static final double MONTH_DAYS = 365.0 / MONTHS;

  private ClimateCodec() {}

  static Climate read(Fields fields) {
    if (fields.has("zone")) {
      return fields.value("zone", json -> ClimateZones.require(Fields.text(json)));
    }
    String name = fields.text("name");
    if (fields.has("months")) {
      return new Climate(name, months(fields));
    }
    if (fields.has("seasons")) {
      return new Climate(name, fields.objects("seasons", ClimateCodec::season));
    }
    if (!fields.has("temperature_C") && !fields.has("humidity_percent")) {
      throw new DataException(
          fields.place(),
          "the climate has none of its forms",
          "Write \"zone\" alone; or \"name\", with \"temperature_C\" and \"humidity_percent\","
              + " with \"months\", or with \"seasons\".");
    }
    return new Climate(name, fields.number("temperature_C"), fields.number("humidity_percent"));
  }

  private static List<Season> months(Fields fields) {
    List<Season> months = fields.objects("months", ClimateCodec::month);
    if (months.size() != MONTHS) {
      throw new DataException(
          fields.value("months").place(),
          "the climate has " + months.size() + " months",
          "Write twelve, the month of filling first; spells of other lengths are \"seasons\".");
    }
    return months;
  }

  private static Season month(Fields fields) {
    return new Season(
        MONTH_DAYS, fields.number("temperature_C"), fields.number("humidity_percent"));
  }

  private static Season season(Fields fields) {
    return new Season(
        fields.number("days"), fields.number("temperature_C"), fields.number("humidity_percent"));
  }

  static Json write(Climate climate) {
    return ClimateZones.of(climate)
        .map(zone -> new Entries().put("zone", zone).json())
        .orElseGet(() -> spelledOut(climate));
  }

  private static Json.Obj spelledOut(Climate climate) {
    Entries entries = new Entries().put("name", climate.name());
    Season first = climate.seasons().get(0);
    if (climate.equals(
        new Climate(climate.name(), first.temperatureC(), first.humidityPercent()))) {
      return put(entries, first).json();
    }
    boolean months =
        climate.seasons().size() == MONTHS
            && climate.seasons().stream().allMatch(s -> s.days() == MONTH_DAYS);
    return months
        ? entries.put("months", climate.seasons(), s -> put(new Entries(), s).json()).json()
        : entries.put("seasons", climate.seasons(), ClimateCodec::write).json();
  }

  private static Json write(Season season) {
    return put(new Entries().put("days", season.days()), season).json();
  }

  private static Entries put(Entries entries, Season season) {
    return entries
        .put("temperature_C", season.temperatureC())
        .put("humidity_percent", season.humidityPercent());
  }
}
