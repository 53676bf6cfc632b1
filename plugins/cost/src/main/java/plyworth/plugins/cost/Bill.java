package plyworth.plugins.cost;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plyworth.shared.route.Pass;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.route.Route;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * One order of a structure, item by item. NaN, the unknown, is passed on into every sum.
 *
 * @param packs packs ordered
 * @param netM2 film in them, m²
 * @param passes passes in order, slitting last
 * @param materials materials, one for each layer, outside first
 * @param freight EUR
 * @param price price of the order, EUR
 */
record Bill(
    double packs,
    double netM2,
    List<PassItem> passes,
    List<MaterialItem> materials,
    double freight,
    double price) {

  /**
   * A pass.
   *
   * @param process what is done
   * @param layers indexes of the layers that enter
   * @param rates rates on the web at hand
   * @param outputM2 area that leaves, m²
   * @param tooling tools, EUR
   */
  record PassItem(
      Process process, List<Integer> layers, PassRates rates, double outputM2, double tooling) {

    double inputM2() {
      return rates.input(outputM2);
    }

    double hours() {
      return rates.hours(outputM2);
    }

    double machineCost() {
      return rates.cost(outputM2);
    }
  }

  /**
   * A material.
   *
   * @param layer the layer it is bought for
   * @param grammage dry, g/m²
   * @param boughtKg mass bought, as supplied, kg
   * @param price EUR/kg
   */
  record MaterialItem(Layer layer, double grammage, double boughtKg, double price) {

    double cost() {
      return boughtKg * price;
    }
  }

  /** Reckons an order backwards from the area that must leave slitting. */
  static Bill of(Structure structure, Tariff tariff, double packs) {
    List<Pass> route = Route.of(structure, tariff.context().processes()).passes();
    List<PassItem> passes = new ArrayList<>();
    MaterialItem[] materials = new MaterialItem[structure.layers().size()];
    double output = tariff.slitM2(packs);
    for (int k = route.size() - 1; k >= 0; k--) {
      PassItem pass = pass(route.get(k), structure, tariff, output, packs);
      output = pass.inputM2();
      for (int i : pass.layers()) {
        materials[i] = material(structure.layers().get(i), tariff, output);
      }
      passes.add(pass);
    }
    Collections.reverse(passes);
    return total(packs, passes, List.of(materials), tariff);
  }

  private static Bill total(
      double packs, List<PassItem> passes, List<MaterialItem> materials, Tariff tariff) {
    double grammage = materials.stream().mapToDouble(MaterialItem::grammage).sum();
    double freight = tariff.freight(grammage, packs);
    double cost = freight;
    for (PassItem pass : passes) {
      cost += pass.machineCost() + pass.tooling();
    }
    for (MaterialItem material : materials) {
      cost += material.cost();
    }
    double netM2 = packs * tariff.brief().pack().filmAreaM2();
    return new Bill(packs, netM2, passes, materials, freight, tariff.priced(cost));
  }

  private static PassItem pass(
      Pass pass, Structure structure, Tariff tariff, double outputM2, double packs) {
    Process process = pass.process();
    double slowdown = 0;
    if (process.role() == ProcessRole.PRINT) {
      for (int i : pass.layers()) {
        slowdown += contact(i, process, structure.layers(), tariff);
      }
    }
    PassRates rates = tariff.rates(process).slowedBy(slowdown);
    return new PassItem(process, pass.layers(), rates, outputM2, tariff.tooling(process, packs));
  }

  /** Slowdown where layer {@code i} and its outer neighbour are a web and what a press prints. */
  private static double contact(int i, Process press, List<Layer> layers, Tariff tariff) {
    if (i == 0) {
      return 0;
    }
    Layer layer = layers.get(i);
    Layer outer = layers.get(i - 1);
    if (layer.process().equals(press.id()) && tariff.web(outer)) {
      return tariff.slowdown(press, outer);
    }
    boolean unwoundOnto = outer.process().equals(press.id()) && tariff.unwound(layer);
    return unwoundOnto ? tariff.slowdown(press, layer) : 0;
  }

  private static MaterialItem material(Layer layer, Tariff tariff, double areaM2) {
    return new MaterialItem(
        layer,
        tariff.context().grammage(layer),
        tariff.boughtKgPerM2(layer) * areaM2,
        tariff.price(layer));
  }

  /** Dry grammage, g/m². */
  double grammage() {
    return materials.stream().mapToDouble(MaterialItem::grammage).sum();
  }

  /** All materials, EUR. */
  double materialCost() {
    return materials.stream().mapToDouble(MaterialItem::cost).sum();
  }

  /** All machine hours, EUR. */
  double machineCost() {
    return passes.stream().mapToDouble(PassItem::machineCost).sum();
  }

  /** All tools, EUR. */
  double tooling() {
    return passes.stream().mapToDouble(PassItem::tooling).sum();
  }

  /** Everything that is paid for, EUR; the margin is what the price has on top. */
  double cost() {
    return materialCost() + machineCost() + tooling() + freight;
  }

  /** Price of the film for 1000 packs, EUR. */
  double pricePerThousand() {
    return price / packs * 1000;
  }

  /** Price of 1000 m² of film in packs, EUR. */
  double pricePerThousandM2() {
    return price / netM2 * 1000;
  }
}
