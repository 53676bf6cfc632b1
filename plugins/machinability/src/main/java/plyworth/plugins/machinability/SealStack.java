package plyworth.plugins.machinability;

import plyworth.shared.brief.Machine.SealZone;

/**
 * How the seal interface between two hot jaws follows them: the ratio of two power series in the
 * Laplace variable, interface temperature over jaw temperature, both above the starting
 * temperature.
 *
 * @param numerator numerator
 * @param denominator denominator, with the same constant term
 */
record SealStack(double[] numerator, double[] denominator) {

  /**
   * The laminates between the jaws where the seal is thickest.
   *
   * <ul>
   *   <li>One on one: half the stack, insulated at the interface: 1 / a.
   *   <li>One on three: the middle of the four webs lets no heat pass, so the interface lies
   *       between a web and the same web turned, insulated behind: d / (a·d + b·c).
   *   <li>One on two: two jaws work on one interface, two webs against one. With the matrices p and
   *       q from either jaw to it, equal temperature and flux there give (p_b + q_b) / (p_a·q_b +
   *       p_b·q_a).
   * </ul>
   *
   * @param web transfer matrix of the laminate, outside to inside
   * @param contact contact resistance between jaw and web, m²·K/W
   * @param zone how many laminates
   * @param sameWay in one on two, whether both webs of the thicker side lie the same way up, as in
   *     a plain lap, instead of face to face
   */
  static SealStack of(Wall web, double contact, SealZone zone, boolean sameWay) {
    Wall near = web.behindContact(contact);
    return switch (zone) {
      case ONE_ON_ONE -> new SealStack(Series.one(), near.a());
      case ONE_ON_THREE ->
          new SealStack(web.d(), Series.products(near.a(), web.d(), near.b(), web.c()));
      case ONE_ON_TWO -> {
        Wall first = (sameWay ? web : web.turned()).behindContact(contact);
        double[] a = Series.products(first.a(), web.a(), first.b(), web.c());
        double[] b = Series.products(first.a(), web.b(), first.b(), web.d());
        yield new SealStack(Series.sum(b, 1, near.b()), Series.products(a, near.b(), b, near.a()));
      }
    };
  }
}
