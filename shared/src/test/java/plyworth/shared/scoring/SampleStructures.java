package plyworth.shared.scoring;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.LongStream;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/** Structures that every plugin must cope with: usual ones, odd ones and random ones. */
public final class SampleStructures {

  /** A film of which nothing but its density is known. */
  public static final String BARE_FILM = "film-without-figures";

  private SampleStructures() {}

  /** Usual, odd and twenty random ones, the same every time. */
  public static List<Structure> all() {
    List<Structure> all = new ArrayList<>(usual());
    all.addAll(odd());
    LongStream.range(0, 20).mapToObj(RandomStructures::structure).forEach(all::add);
    return List.copyOf(all);
  }

  /** The standard library and {@link #BARE_FILM}. */
  public static MaterialLibrary library() {
    Sourced density =
        new Sourced(Double.NaN, Range.exactly(1000), SourceKind.JUDGEMENT, "invented for a test");
    Material bare =
        new Material(
            BARE_FILM,
            "Film without figures",
            "unknown",
            Set.of("web", "film"),
            "film",
            List.of(),
            Map.of(Material.DENSITY, new Property(Material.DENSITY, "kg/m3", List.of(density))),
            "");
    return MaterialLibrary.standard().with(List.of(bare));
  }

  /** Laminates as they are made every day. */
  public static List<Structure> usual() {
    return structures(
        "ink-wb 1.5 g/m2 @flexo-water 40 % / kraft-paper 50 g/m2 / ldpe 12 um @extrusion-lamination"
            + " / aluminium-foil 7 um !bright-out / ldpe 25 um @extrusion-coating",
        "ink-nc 1.5 g/m2 @gravure-solvent 50 % / clay-coated-paper 45 g/m2"
            + " / ldpe 12 um @extrusion-lamination / bopet-met 12 um !metal-in"
            + " / adhesive-pu-solventless 1.8 g/m2 @solventless / lldpe 40 um",
        "bopp 20 um / ink-nc 1.2 g/m2 @flexo-solvent 70 %"
            + " / adhesive-pu-solventless 2 g/m2 @solventless / bopp-met 18 um !metal-out",
        "overprint-varnish-wb 1 g/m2 @flexo-water / ink-wb 1.2 g/m2 @flexo-water 30 %"
            + " / barrier-paper-high 75 um",
        "bopet 12 um / ink-nc 1.5 g/m2 @gravure-solvent 60 % / adhesive-pu-solvent 3 g/m2 @dry-bond"
            + " / aluminium-foil 9 um / adhesive-pu-solvent 3 g/m2 @dry-bond / ldpe 50 um",
        "bopet-alox 12 um !metal-in / ink-wb 1.5 g/m2 @gravure-water 50 %"
            + " / adhesive-pu-solventless 2 g/m2 @solventless / cpp 50 um",
        "mdo-pe 25 um / ink-nc 1.2 g/m2 @flexo-solvent 50 %"
            + " / adhesive-pu-solventless 1.8 g/m2 @solventless / pe-evoh-pe-film 50 um",
        "ink-uv 2 g/m2 @flexo-uv 40 % / kraft-paper 60 g/m2 / pvoh-coating 3 g/m2"
            + " @dispersion-coating / dispersion-coating 8 g/m2 @dispersion-coating",
        "ink-toner 2 g/m2 @digital-toner 40 % / bopet 12 um"
            + " / adhesive-acrylic-wb 2.5 g/m2 @water-based-lamination / ldpe 20 um"
            + " / tie-resin 4 um @coextruded / evoh-32 4 um @coextruded / tie-resin 4 um @coextruded"
            + " / ldpe 20 um @coextruded",
        "wash-primer 0.8 g/m2 @flexo-solvent / ink-nc 1.5 g/m2 @flexo-solvent 30 %"
            + " / aluminium-foil 20 um !matt-out / heat-seal-lacquer 5 g/m2 @lacquering",
        "ink-wb 1.5 g/m2 @flexo-water / glassine 40 g/m2 / cold-seal-latex 4 g/m2"
            + " @cold-seal-coating",
        "kraft-paper 50 g/m2 / eaa 15 um @extrusion-lamination / aluminium-foil 6.35 um"
            + " / ionomer 20 um @extrusion-coating");
  }

  /** Structures that nobody would make, and some that somebody will type. */
  public static List<Structure> odd() {
    List<Structure> odd =
        new ArrayList<>(
            structures(
                "ldpe 50 um",
                "kraft-paper 50 g/m2",
                "aluminium-foil 7 um",
                "ink-wb 1.5 g/m2 @flexo-water 100 %",
                "bopet 12 um / ink-nc 1.5 g/m2 @gravure-solvent",
                "aluminium-foil 7 um / adhesive-pu-solvent 3 g/m2 @dry-bond / aluminium-foil 7 um",
                "adhesive-pu-solvent 3 g/m2 @dry-bond / ldpe 50 um",
                "bopet 12 um / adhesive-pu-solvent 3 g/m2 @dry-bond",
                "adhesive-starch 3 g/m2",
                "evoh-32 5 um",
                "ink-wb 1 g/m2 @flexo-water / ink-nc 1 g/m2 @gravure-solvent / bopp 20 um",
                BARE_FILM + " 20 um",
                "bopet 12 um / adhesive-pu-solvent 3 g/m2 @dry-bond / " + BARE_FILM + " 20 um",
                "ldpe 1 nm / aluminium-foil 1 nm / kraft-paper 0.001 g/m2",
                "ldpe 5000 um / aluminium-foil 500 um / kraft-paper 2000 g/m2"));
    List<String> many = Collections.nCopies(10, "bopet 12 um / ldpe 12 um @extrusion-lamination");
    odd.addAll(structures(String.join(" / ", many)));
    return List.copyOf(odd);
  }

  private static List<Structure> structures(String... notations) {
    return Arrays.stream(notations).map(LayerNotation::readStructure).toList();
  }
}
