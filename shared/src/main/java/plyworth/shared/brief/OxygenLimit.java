package plyworth.shared.brief;

/**
 * How oxygen spoils a product.
 *
 * @param uptakePpm oxygen the product may take up, mg per kg of product
 * @param headspacePercent oxygen left in the head-space when sealed, volume %
 */
public record OxygenLimit(double uptakePpm, double headspacePercent) {

  /** Checks the figures. */
  public OxygenLimit {
    Check.positive("the allowed oxygen uptake", uptakePpm, "ppm");
    Check.between("the oxygen in the head-space", headspacePercent, 0, 100, "%");
  }
}
