package plyworth.workbench.desktop.word;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plyworth.shared.plant.AmountSpan;
import plyworth.shared.plant.BoughtWeb;
import plyworth.shared.plant.Plant;
import plyworth.shared.plant.WorkCentre;
import plyworth.workbench.host.Digits;

/** How a plant is written on screen: its machines, its services and its webs, one after another. */
public final class PlantWords {

  private PlantWords() {}

  /** The machines of the plant, or the services it sends work to. */
  public static String centres(Plant plant, boolean outside) {
    return joined(
        plant.centres().stream().filter(c -> c.outside() == outside).map(PlantWords::of).toList());
  }

  /** The webs on offer. */
  public static String webs(Plant plant) {
    return joined(plant.webs().stream().map(PlantWords::of).toList());
  }

  private static String joined(List<String> parts) {
    return parts.isEmpty() ? Words.of("brief.none") : String.join("; ", parts);
  }

  private static String of(WorkCentre centre) {
    String said =
        Words.of(
            "brief.centre",
            centre.name(),
            String.join(", ", centre.processes()),
            Digits.sensible(centre.widthMm().from()),
            Digits.sensible(centre.widthMm().to()),
            Digits.sensible(centre.days()));
    return centre
        .charge()
        .map(
            c ->
                Words.of(
                    "brief.charged",
                    said,
                    Digits.sensible(c.setupEur()),
                    Digits.sensible(c.per1000M2Eur())))
        .orElse(said);
  }

  private static String of(BoughtWeb web) {
    String said =
        Words.of(
            "brief.web",
            Stream.of(web.material(), web.process())
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" @")),
            AmountSpan.list(web.gauges()),
            Digits.sensible(web.leadDays()));
    return web.approved() ? said : Words.of("brief.not-approved", said);
  }
}
