package plyworth.shared.structure;

import plyworth.shared.quantity.Unit;

/** The two ways to say how much of a material a layer holds. */
public enum AmountUnit {
  /** Gauge in µm. */
  UM(Unit.UM),
  /** Grammage in g/m², dry. */
  GSM(Unit.GSM);

  private final Unit unit;

  AmountUnit(Unit unit) {
    this.unit = unit;
  }

  /** The unit amounts are kept in. */
  public Unit unit() {
    return unit;
  }
}
