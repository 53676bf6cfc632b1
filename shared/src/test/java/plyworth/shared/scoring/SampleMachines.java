package plyworth.shared.scoring;

import plyworth.shared.brief.Machine;

/** Invented filling machines for the sample briefs. */
final class SampleMachines {

  private SampleMachines() {}

  static Machine stickPack() {
    return machine("ten-lane stick-pack machine", 10, Machine.SealZone.ONE_ON_TWO, 60);
  }

  static Machine sachet() {
    return machine("two-web sachet machine", 4, Machine.SealZone.ONE_ON_ONE, 70);
  }

  static Machine pillowPack() {
    return machine("vertical pillow-pack machine", 1, Machine.SealZone.ONE_ON_THREE, 80);
  }

  private static Machine machine(
      String name, int lanes, Machine.SealZone zone, double fillLimitPerMinute) {
    return new Machine(
        name,
        lanes,
        160,
        8,
        2000,
        0.4,
        zone,
        0.5,
        5,
        0.15,
        1.3,
        0.1,
        fillLimitPerMinute,
        90,
        0.8,
        0.01);
  }
}
