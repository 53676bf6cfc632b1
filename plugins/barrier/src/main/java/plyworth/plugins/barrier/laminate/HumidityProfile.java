package plyworth.plugins.barrier.laminate;

import java.util.List;

/**
 * Relative humidity at the faces of the plies of a laminate, outside first, in steady state.
 *
 * @param plies the plies
 * @param faces humidity outside, between the plies and inside, 0 to 1, one more than plies; NaN
 *     when a resistance is unknown
 */
public record HumidityProfile(List<Ply> plies, double[] faces) {

  private static final int STEPS = 100;

  /** How far the last face may miss the humidity inside. */
  private static final double CLOSE = 1e-15;

  /**
   * The profile between two humidities. The flux is sought for which the way from outside ends at
   * the humidity inside: Newton's steps, halved where they would leave what is still possible.
   *
   * @param outside relative humidity outside, 0 to 1
   * @param inside the same inside
   */
  public static HumidityProfile of(List<Ply> plies, double outside, double inside) {
    double loose = 0;
    double tight = 0;
    for (Ply ply : plies) {
      double low = Math.min(outside, inside);
      double high = Math.max(outside, inside);
      loose += ply.resistance() / ply.water().highest(low, high);
      tight += ply.resistance() / ply.water().lowest(low, high);
    }
    double drop = outside - inside;
    return of(plies, outside, inside, drop / tight, drop / loose);
  }

  /** The same, with the flux known to lie between two. */
  private static HumidityProfile of(
      List<Ply> plies, double outside, double inside, double least, double most) {
    double[] faces = new double[plies.size() + 1];
    double low = Math.min(least, most);
    double high = Math.max(least, most);
    double flux = (low + high) / 2;
    for (int step = 0; step < STEPS; step++) {
      double slope = march(plies, outside, flux, faces);
      double miss = faces[plies.size()] - inside;
      if (low == high || Math.abs(miss) <= CLOSE || Double.isNaN(miss)) {
        break;
      }
      low = miss > 0 ? flux : low;
      high = miss > 0 ? high : flux;
      double next = flux - miss / slope;
      double tried = next > low && next < high ? next : (low + high) / 2;
      if (tried == flux) {
        break;
      }
      flux = tried;
    }
    if (!Double.isNaN(flux)) {
      faces[plies.size()] = inside;
    }
    return new HumidityProfile(List.copyOf(plies), faces);
  }

  /** Fills the faces for a flux; returns how the last one changes with it. */
  private static double march(List<Ply> plies, double outside, double flux, double[] faces) {
    double slope = 0;
    faces[0] = outside;
    for (int i = 0; i < plies.size(); i++) {
      Ply ply = plies.get(i);
      HumidityCurve curve = ply.water();
      if (curve == HumidityCurve.ONE) {
        faces[i + 1] = faces[i] - flux * ply.resistance();
        slope -= ply.resistance();
      } else {
        faces[i + 1] = curve.reach(faces[i], -flux * ply.resistance());
        slope = (curve.value(faces[i]) * slope - ply.resistance()) / curve.value(faces[i + 1]);
      }
    }
    return slope;
  }

  /** Humidity within a ply, at a share of its thickness from its outer face, 0 to 1. */
  public double within(int ply, double share) {
    HumidityCurve curve = plies.get(ply).water();
    return curve.reach(faces[ply], share * curve.integral(faces[ply], faces[ply + 1]));
  }

  /** Resistance of a ply to water, in its unit. */
  public double resistance(int ply) {
    return plies.get(ply).resistance() / plies.get(ply).water().mean(faces[ply], faces[ply + 1]);
  }

  /** Resistance of the whole laminate to water; infinite when it is tight. */
  public double resistance() {
    double sum = 0;
    for (int i = 0; i < plies.size(); i++) {
      sum += resistance(i);
    }
    return sum < Ply.TIGHT / 2 || Double.isNaN(sum) ? sum : Double.POSITIVE_INFINITY;
  }

  /**
   * How many times a ply resists a gas compared with a ply whose permeability stands at its
   * reference throughout: the mean of 1/g along the ply, where dx ∝ f dh, hence ∫ f/g dh / ∫ f dh.
   *
   * @param gas how many times more gas it lets through at a humidity, g
   */
  public double resists(int ply, HumidityCurve gas) {
    HumidityCurve water = plies.get(ply).water();
    return water.over(gas).mean(faces[ply], faces[ply + 1])
        / water.mean(faces[ply], faces[ply + 1]);
  }
}
