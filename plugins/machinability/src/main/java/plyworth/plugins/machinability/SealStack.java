package plyworth.plugins.machinability;

import plyworth.shared.brief.Machine.SealZone;

/**
 * How the seal interface between two hot jaws follows them: the ratio of two power series in the
 * Laplace variable, interface temperature over jaw temperature, both above the starting
 * temperature. One ratio for each row of a tile.
 */
final class SealStack {

  private final SeriesColumns one = SeriesColumns.one();
  private final SeriesColumns nearA = new SeriesColumns();
  private final SeriesColumns nearB = new SeriesColumns();
  private final SeriesColumns firstA = new SeriesColumns();
  private final SeriesColumns firstB = new SeriesColumns();
  private final SeriesColumns farA = new SeriesColumns();
  private final SeriesColumns farB = new SeriesColumns();
  private final SeriesColumns bothA = new SeriesColumns();
  private final SeriesColumns bothD = new SeriesColumns();
  private final SeriesColumns above = new SeriesColumns();
  private final SeriesColumns below = new SeriesColumns();
  private SeriesColumns numerator;
  private SeriesColumns denominator;

  /** Numerators of the ratios, with the same constant term as the denominators. */
  SeriesColumns numerator() {
    return numerator;
  }

  /** Denominators of the ratios. */
  SeriesColumns denominator() {
    return denominator;
  }

  /**
   * Stacks the laminates that lie between the jaws. Contact adds its resistance r outside: a + r·c,
   * b + r·d.
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
   * <p>The determinant a·d − b·c of a wall is 1, which saves half the products: a·d + b·c = 2·a·d −
   * 1.
   *
   * @param web transfer matrices of the laminates, outside to inside
   * @param contact contact resistance between jaw and web, m²·K/W; 0 for perfect contact
   * @param zone how many laminates
   * @param sameWay in one on two, whether both webs of the thicker side lie the same way up, as in
   *     a plain lap, instead of face to face
   * @return this
   */
  SealStack pile(Walls web, double contact, SealZone zone, boolean sameWay) {
    nearA.sum(web.a(), contact, web.c());
    switch (zone) {
      case ONE_ON_ONE -> be(one, nearA);
      case ONE_ON_THREE -> {
        bothD.sum(web.d(), 1, web.d());
        below.product(bothD, nearA, 1);
        be(web.d(), below);
      }
      case ONE_ON_TWO -> {
        nearB.sum(web.b(), contact, web.d());
        pileTwo(web, sameWay ? web : web.turned(), contact);
        above.sum(farB, 1, nearB);
        below.product(farA, nearB, 0);
        below.addProduct(farB, nearA);
        be(above, below);
      }
    }
    return this;
  }

  /**
   * The upper row of the matrix of two webs behind a contact, the outer one like the inner or
   * turned: its a is (a + outer d)·(outer a behind the contact) − 1, its b (d + outer a)·(outer b
   * behind the contact) − r. Both follow from the determinant 1.
   */
  private void pileTwo(Walls web, Walls outer, double contact) {
    firstA.sum(outer.a(), contact, outer.c());
    firstB.sum(outer.b(), contact, outer.d());
    bothA.sum(web.a(), 1, outer.d());
    bothD.sum(web.d(), 1, outer.a());
    farA.product(bothA, firstA, 1);
    farB.product(bothD, firstB, contact);
  }

  private void be(SeriesColumns numerator, SeriesColumns denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }
}
