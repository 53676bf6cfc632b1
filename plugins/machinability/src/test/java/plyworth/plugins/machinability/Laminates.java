package plyworth.plugins.machinability;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Laminates of the worked cases, outside first. Modulus in machine direction, conductivity, density
 * and specific heat are inputs of those cases, not of the material library.
 */
final class Laminates {

  private Laminates() {}

  static LayerFigures paper(double um) {
    return layer(um, 6000, 0.10, 833, 1400);
  }

  static LayerFigures paperAcross(double um) {
    return layer(um, 2500, 0.10, 833, 1400);
  }

  static LayerFigures ldpe(double um) {
    return layer(um, 200, 0.24, 920, 2200);
  }

  static LayerFigures foil(double um) {
    return layer(um, 69_000, 220, 2700, 900);
  }

  static LayerFigures acidCopolymer(double um) {
    return layer(um, 130, 0.24, 935, 2300);
  }

  static LayerFigures polyester(double um) {
    return layer(um, 4500, 0.20, 1395, 1200);
  }

  static LayerFigures bopp(double um) {
    return layer(um, 2500, 0.20, 905, 2000);
  }

  static LayerFigures adhesive(double um) {
    return layer(um, 50, 0.20, 1150, 1700);
  }

  static LayerFigures castPolypropylene(double um) {
    return layer(um, 650, 0.20, 900, 2000);
  }

  /** Paper 60 / LDPE 12 / foil 7 / acid copolymer 30. */
  static List<LayerFigures> paperFoil() {
    return List.of(paper(60), ldpe(12), foil(7), acidCopolymer(30));
  }

  /** The same with metallised polyester 12 in place of the foil. */
  static List<LayerFigures> paperPolyester() {
    return List.of(paper(60), ldpe(12), polyester(12), acidCopolymer(30));
  }

  /** Paper 60 / LDPE 30. */
  static List<LayerFigures> paperPolyethylene() {
    return List.of(paper(60), ldpe(30));
  }

  /** Polyester 12 / adhesive 3 / foil 7 / adhesive 3 / LDPE 50. */
  static List<LayerFigures> polyesterFoil() {
    return List.of(polyester(12), adhesive(3), foil(7), adhesive(3), ldpe(50));
  }

  /** BOPP 20 / adhesive 2 / metallised BOPP 20 / adhesive 2 / cast PP 30. */
  static List<LayerFigures> boppDuplex() {
    return List.of(bopp(20), adhesive(2), bopp(20), adhesive(2), castPolypropylene(30));
  }

  /** BOPP 20 / adhesive 2 / cast PP 30. */
  static List<LayerFigures> boppCast() {
    return List.of(bopp(20), adhesive(2), castPolypropylene(30));
  }

  static LayerFigures layer(double um, double modulus, double k, double rho, double c) {
    double nothing = Double.NaN;
    return new LayerFigures(
        um / 1000,
        modulus,
        um * 1e-6 / k,
        um * 1e-6 * rho * c,
        nothing,
        nothing,
        nothing,
        Set.of());
  }

  static Wall wall(List<LayerFigures> layers) {
    Wall wall = Wall.NONE;
    for (LayerFigures layer : layers) {
      wall = wall.then(layer.wall());
    }
    return wall;
  }

  /** Every layer in two halves. */
  static List<LayerFigures> halved(List<LayerFigures> layers) {
    List<LayerFigures> halves = new ArrayList<>();
    for (LayerFigures l : layers) {
      LayerFigures half =
          new LayerFigures(
              l.gaugeMm() / 2,
              l.modulus(),
              l.resistance() / 2,
              l.capacity() / 2,
              l.initiation(),
              l.upperLimit(),
              l.faceLimit(),
              l.kinds());
      halves.add(half);
      halves.add(half);
    }
    return halves;
  }
}
