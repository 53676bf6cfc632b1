package plyworth.plugins.recyclability;

import java.util.Locale;

/**
 * A material family, as the properties {@code share-…} name it.
 *
 * <p>Tie resins carry {@code share-pe} in the library. Acid copolymers, ethylene-vinyl acetate and
 * ionomers are weighed with polyethylene as well: an engineering assumption, in keeping with the
 * North American PE film guidance, which bounds ionomer (below 20 %) and vinyl acetate (up to 5 %
 * of the pack) but does not shut them out (recyclers’ guidance table for PE film, name withheld).
 * Regenerated cellulose is neither a paper web nor a polyolefin and is weighed with the foreign
 * polymers: judgement.
 */
enum Family {
  FIBRE(Group.FIBRE),
  PE(Group.POLYETHYLENE),
  ACID_COPOLYMER(Group.POLYETHYLENE),
  EVA(Group.POLYETHYLENE),
  IONOMER(Group.POLYETHYLENE),
  PP(Group.POLYPROPYLENE),
  PET(Group.POLYESTER),
  PA(Group.POLYAMIDE),
  EVOH(Group.EVOH),
  PVOH(Group.COATING),
  COATING(Group.COATING),
  PVDC(Group.CHLORINATED),
  BIOPOLYMER(Group.FOREIGN),
  ACRYLONITRILE(Group.FOREIGN),
  CELLULOSE(Group.FOREIGN),
  ALUMINIUM(Group.FOIL),
  ALUMINIUM_VAPOUR(Group.VAPOUR),
  INK(Group.INK),
  ADHESIVE(Group.OTHER),
  LACQUER(Group.OTHER),
  WAX(Group.OTHER);

  /** Number of families. */
  static final int COUNT = values().length;

  final Group group;

  Family(Group group) {
    this.group = group;
  }

  /** The name in property ids and text keys. */
  String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Id of the property that holds its mass share. */
  String property() {
    return "share-" + id();
  }
}
