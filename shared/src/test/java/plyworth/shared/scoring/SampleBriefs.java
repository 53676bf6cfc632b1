package plyworth.shared.scoring;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.Market;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.Order;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.Pack;
import plyworth.shared.brief.Product;
import plyworth.shared.brief.VolatileContent;

/** Invented briefs that between them ask for everything a plugin may read. */
public final class SampleBriefs {

  private static final Climate TEMPERATE = new Climate("23 °C 50 % RH", 23, 50);
  private static final Climate HOT_AND_HUMID = new Climate("30 °C 75 % RH", 30, 75);
  private static final Market MARKET = new Market("eu", 2027, 2035);
  private static final Order ORDER = new Order(2_000_000, 4, 6, 1000, 10);

  private SampleBriefs() {}

  /** All of them. */
  public static List<Brief> all() {
    return List.of(sugarStick(), seasoningStick(), alcoholWipe(), freezeDriedSnack());
  }

  /** A stick of sugar: crystals that take up nothing until they dissolve. */
  public static Brief sugarStick() {
    MoistureLimit moisture = new MoistureLimit(new Isotherm.Deliquescent(0.84, 0.005), 4, 0.4, 0.8);
    Product sugar =
        new Product(
            "sugar",
            Product.Form.CRYSTALS,
            4,
            Set.of("fines"),
            Optional.of(moisture),
            Optional.empty(),
            Optional.empty());
    Pack stick = new Pack(Pack.Format.STICK, 20, 120, 10, 8, 2);
    return new Brief(sugar, TEMPERATE, 730, stick, SampleMachines.stickPack(), MARKET, ORDER);
  }

  /**
   * A seasoning stick in a hot and humid climate: cakes with moisture, turns rancid with oxygen.
   */
  public static Brief seasoningStick() {
    MoistureLimit moisture = new MoistureLimit(new Isotherm.Gab(0.055, 12, 0.95), 7.7, 0.2, 0.43);
    Product seasoning =
        new Product(
            "seasoning",
            Product.Form.POWDER,
            8,
            Set.of("fat", "fines"),
            Optional.of(moisture),
            Optional.of(new OxygenLimit(300, 21)),
            Optional.empty());
    Pack stick = new Pack(Pack.Format.STICK, 25, 140, 10, 8, 3);
    return new Brief(
        seasoning, HOT_AND_HUMID, 365, stick, SampleMachines.stickPack(), MARKET, ORDER);
  }

  /** An isopropanol wipe in a sachet of two webs: alcohol must not escape. */
  public static Brief alcoholWipe() {
    Product wipe =
        new Product(
            "alcohol wipe",
            Product.Form.WIPE,
            1.6,
            Set.of("alcohol"),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new VolatileContent("isopropanol", 0.7, 1.2, 5)));
    Pack sachet = new Pack(Pack.Format.SACHET_FOUR_SIDE, 60, 80, 8, 0, 1);
    return new Brief(wipe, TEMPERATE, 1095, sachet, SampleMachines.sachet(), MARKET, ORDER);
  }

  /** A freeze-dried snack in a pillow pack: crisp and sensitive to oxygen. */
  public static Brief freezeDriedSnack() {
    Product snack =
        new Product(
            "freeze-dried fruit",
            Product.Form.PIECES,
            12,
            Set.of("acid", "fines"),
            Optional.of(new MoistureLimit(new Isotherm.Linear(0.25), 11.8, 0.05, 0.3)),
            Optional.of(new OxygenLimit(300, 1)),
            Optional.empty());
    Pack pillow = new Pack(Pack.Format.PILLOW, 110, 150, 12, 12, 180);
    return new Brief(snack, TEMPERATE, 270, pillow, SampleMachines.pillowPack(), MARKET, ORDER);
  }
}
