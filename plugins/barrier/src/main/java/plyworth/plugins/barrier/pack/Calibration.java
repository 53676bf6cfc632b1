package plyworth.plugins.barrier.pack;

import static plyworth.plugins.barrier.pack.BarrierCriteria.MARGIN_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.OTR_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.PACK_OTR_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.PACK_WVTR_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.SHELF_LIFE_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.VOLATILE_LOSS_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.WVTR_ID;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plyworth.plugins.barrier.calibration.Correction;
import plyworth.plugins.barrier.calibration.Evidence;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.scoring.Today;
import plyworth.shared.structure.Structure;

/**
 * What measurements of today's pack say about the terms that all packs of a brief share: how much
 * harm forming and handling do, and what the seal edge lets through.
 *
 * <p>A figure of the formed pack, a field life or its transmission say, is inverted through the
 * same model: the factor on the shared terms is solved for at which the prediction is the
 * measurement. A flat sheet says something about its material and nothing about harm; it is
 * compared, and corrects nothing.
 *
 * <p>Every draw of the uncertain inputs is calibrated anew: in each world today's pack does what
 * was measured, and what is drawn besides is the spread of the correction.
 *
 * @param comparisons measured beside predicted
 * @param correction of the shared terms in this draw
 * @param times the factor on the shared terms, drawn from the correction
 */
public record Calibration(List<Comparison> comparisons, Correction correction, double times) {

  /** Nothing was measured. */
  static final Calibration NONE = new Calibration(List.of(), Correction.NONE, 1);

  /** Name of the drawn input. */
  public static final String INPUT = "barrier/shared-terms";

  /** Figures of the formed pack, which the shared terms explain. */
  private static final List<String> FORMED =
      List.of(SHELF_LIFE_ID, MARGIN_ID, VOLATILE_LOSS_ID, PACK_OTR_ID, PACK_WVTR_ID);

  private static final List<String> FLAT = List.of(OTR_ID, WVTR_ID);

  /** The calibration of a model whose shared terms stand at their standard. */
  public static Calibration of(BarrierModel standard) {
    Today today = standard.context().today();
    if (today.structure().isEmpty()) {
      return NONE;
    }
    Structure structure = today.structure().get();
    List<Comparison> comparisons =
        Stream.concat(FORMED.stream(), FLAT.stream())
            .flatMap(
                id ->
                    today.of(BarrierCriteria.PLUGIN, id).stream()
                        .map(m -> compare(standard, structure, id, m)))
            .toList();
    Correction correction =
        Correction.of(comparisons.stream().flatMap(c -> c.evidence().stream()).toList());
    double times = standard.context().draw().figure(INPUT, correction.range());
    return new Calibration(comparisons, correction, times);
  }

  private static Comparison compare(
      BarrierModel standard, Structure structure, String id, Measurement measurement) {
    double predicted = predicted(standard, structure, id);
    boolean formed = FORMED.contains(id);
    Optional<Evidence> evidence =
        formed && !Double.isNaN(predicted)
            ? Evidence.of(
                times -> predicted(standard.with(times), structure, id),
                measurement.value(),
                measurement.spread(),
                measurement.samples())
            : Optional.empty();
    return new Comparison(measurement, predicted, formed, evidence);
  }

  private static double predicted(BarrierModel model, Structure structure, String id) {
    PackBarrier barrier = PackBarrier.of(model, structure);
    return switch (id) {
      case SHELF_LIFE_ID -> barrier.days();
      case MARGIN_ID -> barrier.days() / barrier.demand().days();
      case VOLATILE_LOSS_ID -> barrier.volatileLoss();
      case PACK_OTR_ID -> barrier.packOtr();
      case PACK_WVTR_ID -> barrier.packWvtr();
      case OTR_ID -> barrier.otr();
      case WVTR_ID -> barrier.wvtr();
      default -> Double.NaN;
    };
  }

  /** Whether a criterion rests on calibrated terms. */
  public boolean of(String criterion) {
    return FORMED.contains(criterion) && used().findAny().isPresent();
  }

  /** The comparisons that correct the shared terms. */
  public Stream<Comparison> used() {
    return comparisons.stream().filter(c -> c.evidence().isPresent());
  }
}
