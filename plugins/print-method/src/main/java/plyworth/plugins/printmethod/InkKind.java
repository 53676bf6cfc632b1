package plyworth.plugins.printmethod;

import plyworth.shared.data.Choice;

/** What a liquid dries by. */
public enum InkKind {
  /** Water, with some volatile organics. */
  WATER,
  /** Organic solvent. */
  SOLVENT,
  /** It sets whole: cured by radiation, fused, or free of solvent. */
  CURED;

  /** The name in plain spelling. */
  public String plain() {
    return Choice.plain(this);
  }
}
