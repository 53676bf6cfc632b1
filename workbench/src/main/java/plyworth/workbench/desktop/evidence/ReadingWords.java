package plyworth.workbench.desktop.evidence;

import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/** How readings and estimates are written on screen. */
final class ReadingWords {

  private ReadingWords() {}

  /** The value and the factor it is sure to, without its unit. */
  static String figure(Measurement reading) {
    String value = Digits.sensible(reading.value());
    return reading.spread() == 1
        ? value
        : value + " " + Words.of("brief.measurement.spread", Digits.sensible(reading.spread()));
  }

  /** Method, samples, day and remark. */
  static String how(Measurement reading) {
    String said = Words.of("measured.how", reading.method(), reading.samples());
    String dated = reading.date().isEmpty() ? said : said + ", " + reading.date();
    return reading.note().isEmpty() ? dated : dated + "\n" + reading.note();
  }

  /** The typical figure and the middle 90 %; a dash when it is unknown. */
  static String estimate(Range range) {
    return range.known()
        ? Words.of(
            "measured.estimate",
            Digits.sensible(range.typical()),
            Digits.sensible(range.low()),
            Digits.sensible(range.high()))
        : "–";
  }

  /** What was measured over what was predicted; a dash where that is not known. */
  static String ratio(double ratio) {
    return Double.isNaN(ratio) ? "–" : "× " + Digits.sensible(ratio);
  }
}
