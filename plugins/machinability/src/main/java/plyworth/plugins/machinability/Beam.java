package plyworth.plugins.machinability;

import java.util.List;

/**
 * Bonded elastic layers in bending: A = ΣE·t, B = ΣE·(z₂² − z₁²)/2, D = ΣE·(z₂³ − z₁³)/3 from the
 * outer face; neutral axis B/A, bending stiffness D − B²/A (laminate theory in one dimension; the
 * same as the transformed section).
 *
 * @param tensile A, N/mm
 * @param neutralMm distance of the neutral axis from the outer face, mm
 * @param bending bending stiffness per width, N·mm, the same number in mN·m
 */
record Beam(double tensile, double neutralMm, double bending) {

  static Beam of(List<LayerFigures> layers) {
    double a = 0;
    double b = 0;
    double d = 0;
    double z = 0;
    for (LayerFigures layer : layers) {
      double next = z + layer.gaugeMm();
      a += layer.modulus() * layer.gaugeMm();
      b += layer.modulus() * (next * next - z * z) / 2;
      d += layer.modulus() * (next * next * next - z * z * z) / 3;
      z = next;
    }
    return new Beam(a, b / a, d - b * b / a);
  }

  /**
   * Force that bends a strip in the two-point test: S = 60·F·l²/(π·α·b) (form of ISO 2493 and ISO
   * 5628, from memory; the small-deflection cantilever).
   *
   * @param lengthMm bending length, mm
   * @param degrees angle, °
   * @param widthMm width of the strip, mm
   * @return N
   */
  double twoPointForce(double lengthMm, double degrees, double widthMm) {
    return bending * Math.PI * degrees * widthMm / (60 * lengthMm * lengthMm);
  }
}
