package plyworth.plugins.barrier.leak;

/**
 * A hole through a laminate or a channel through a seal that nothing fills.
 *
 * @param diameterUm its width, µm
 * @param lengthUm way through it, µm
 */
public record Channel(double diameterUm, double lengthUm) {

  /**
   * Cross-section over length, m: πr²/(L + πr/2), where πr/2 stands for the air at both ends, two
   * resistances of 1/(4Dr) (analytic).
   */
  public double crossSectionOverLengthM() {
    double radius = diameterUm / 2;
    return Math.PI * radius * radius / (lengthUm + Math.PI / 2 * radius) * 1e-6;
  }
}
