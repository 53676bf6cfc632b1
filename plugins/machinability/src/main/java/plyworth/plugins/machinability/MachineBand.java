package plyworth.plugins.machinability;

import java.util.List;
import plyworth.shared.brief.Pack;
import plyworth.shared.data.Choice;
import plyworth.shared.data.Csv;
import plyworth.shared.data.Resources;

/**
 * What a type of filling machine takes.
 *
 * @param machine its generic name
 * @param stiffnessLow least bending stiffness that forms and feeds well, N·mm
 * @param stiffnessHigh most, N·mm
 * @param stiffnessHard bending stiffness that does not run, N·mm; NaN for no such limit
 * @param tensileLeast least tensile stiffness for good register, N/mm
 * @param windowComfortable jaw window that runs without care, K
 * @param windowHard jaw window below which it does not run, K
 * @param source where from
 */
record MachineBand(
    String machine,
    double stiffnessLow,
    double stiffnessHigh,
    double stiffnessHard,
    double tensileLeast,
    double windowComfortable,
    double windowHard,
    String source) {

  private static final String FILE = "machine-bands.csv";
  private static final List<String> HEADER =
      List.of(
          "format",
          "machine",
          "stiffness-low",
          "stiffness-high",
          "stiffness-hard",
          "tensile-least",
          "window-comfortable",
          "window-hard",
          "source");
  private static final List<Csv.Row> TABLE =
      Csv.read(Resources.text(MachineBand.class, FILE), FILE, HEADER);

  /** The band of the machine type that makes packs of a format. */
  static MachineBand of(Pack.Format format) {
    return TABLE.stream()
        .filter(r -> r.text("format").equals(Choice.plain(format)))
        .map(MachineBand::read)
        .findFirst()
        .orElseThrow();
  }

  private static MachineBand read(Csv.Row row) {
    return new MachineBand(
        row.text("machine"),
        row.number("stiffness-low"),
        row.number("stiffness-high"),
        row.numberOrUnknown("stiffness-hard"),
        row.number("tensile-least"),
        row.number("window-comfortable"),
        row.number("window-hard"),
        row.text("source"));
  }
}
