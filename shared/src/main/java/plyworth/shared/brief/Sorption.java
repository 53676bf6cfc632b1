package plyworth.shared.brief;

/** How a product holds water: by one isotherm, or by one for every temperature. */
public sealed interface Sorption permits Isotherm, SorptionLaw, KnownProduct {

  /** The isotherm at a temperature in °C. */
  Isotherm at(double celsius);
}
