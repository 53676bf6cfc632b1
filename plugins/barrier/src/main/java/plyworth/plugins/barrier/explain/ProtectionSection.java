package plyworth.plugins.barrier.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.plugins.barrier.climate.StorageClimate;
import plyworth.plugins.barrier.course.ProtectionNeeded;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Text;

/** What the brief lets a pack transmit at most, beside what this one transmits. */
final class ProtectionSection {

  /** Climate at which laboratories measure water vapour. */
  private static final Season LABORATORY = new Season(1, 38, 90);

  private final BarrierModel model;
  private final PackConductance pack;
  private final List<List<Object>> rows = new ArrayList<>();

  private ProtectionSection(BarrierModel model, PackConductance pack) {
    this.model = model;
    this.pack = pack;
  }

  /** The table; empty when no pack is known. */
  static Optional<Section> of(BarrierModel model, PackBarrier barrier, PackConductance pack) {
    ProtectionSection section = new ProtectionSection(model, pack);
    for (PackBarrier.Path path : barrier.paths()) {
      if (!Double.isNaN(path.total()) && !Double.isNaN(path.days())) {
        section.rows(path, ProtectionNeeded.of(path.mechanism(), pack, barrier.demand().days()));
      }
    }
    return section.rows.isEmpty() ? Optional.empty() : Optional.of(section.table());
  }

  private void rows(PackBarrier.Path path, ProtectionNeeded need) {
    StorageClimate storage = model.climate();
    String word = path.mechanism().word();
    Permeant permeant = path.mechanism().permeant();
    if (permeant == Permeant.WATER) {
      Season season = new Season(1, storage.celsius(), 100 * storage.outside());
      row(word, "g/day", "g/(m2.day)", season, path.total() * pascal(season), need);
      double laboratory = pack.at(permeant, LABORATORY, storage.inside());
      row(word, "g/day", "g/(m2.day)", LABORATORY, laboratory * pascal(LABORATORY), need);
    } else {
      boolean oxygen = permeant == Permeant.OXYGEN;
      String perPack = oxygen ? "cm3/(day.bar)" : "g/day";
      Season season = new Season(1, storage.celsius(), 100 * storage.outside());
      row(word, perPack, permeant.rateUnit(), season, path.total(), need);
    }
  }

  private static double pascal(Season season) {
    return SaturatedVapour.pascal(season.temperatureC()) * season.humidityPercent() / 100;
  }

  private void row(
      String word,
      String perPack,
      String perFace,
      Season season,
      double rate,
      ProtectionNeeded need) {
    double face = model.pack().faceM2();
    boolean any = Double.isInfinite(need.times());
    rows.add(
        List.of(
            word,
            season.temperatureC(),
            season.humidityPercent(),
            perPack,
            any ? "word.any" : (Object) (rate * need.times()),
            rate,
            perFace,
            any ? "word.any" : (Object) (rate * need.times() / face),
            rate / face,
            any ? "word.any" : (Object) need.times()));
  }

  private Section table() {
    List<Text> columns =
        List.of(
            Text.of("column.mechanism"),
            Text.of("column.temperature"),
            Text.of("column.outside"),
            Text.of("column.unit"),
            Text.of("column.need-pack"),
            Text.of("column.has-pack"),
            Text.of("column.unit"),
            Text.of("column.need-face"),
            Text.of("column.has-face"),
            Text.of("column.may-conduct"));
    return new Table(Text.of("section.protection"), columns, rows, Text.of("basis.protection"));
  }
}
