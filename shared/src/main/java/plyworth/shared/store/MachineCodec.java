package plyworth.shared.store;

import plyworth.shared.brief.Machine;
import plyworth.shared.data.Fields;
import plyworth.shared.data.Json;

/** The filling machine. */
final class MachineCodec {

  private MachineCodec() {}

  static Machine read(Fields fields) {
    return new Machine(
        fields.text("name"),
        fields.whole("lanes"),
        fields.number("jaw_C"),
        fields.number("jaw_spread_K"),
        fields.number("contact_W_per_m2K"),
        fields.number("dwell_s"),
        fields.choice("seal_zone", Machine.SealZone.class),
        fields.number("feed_m_per_s"),
        fields.number("acceleration_m_per_s2"),
        fields.number("jaw_travel_s"),
        fields.number("dwell_factor"),
        fields.number("cool_s"),
        fields.number("fill_limit_cycles_per_min"),
        fields.number("hour_rate_EUR_per_h"),
        fields.number("efficiency"),
        fields.number("packing_waste"));
  }

  static Json write(Machine machine) {
    return new Entries()
        .put("name", machine.name())
        .put("lanes", machine.lanes())
        .put("jaw_C", machine.jawC())
        .put("jaw_spread_K", machine.jawSpreadK())
        .put("contact_W_per_m2K", machine.contactWm2K())
        .put("dwell_s", machine.dwellS())
        .put("seal_zone", machine.zone())
        .put("feed_m_per_s", machine.feedMs())
        .put("acceleration_m_per_s2", machine.accelerationMs2())
        .put("jaw_travel_s", machine.jawTravelS())
        .put("dwell_factor", machine.dwellFactor())
        .put("cool_s", machine.coolS())
        .put("fill_limit_cycles_per_min", machine.fillLimitPerMinute())
        .put("hour_rate_EUR_per_h", machine.hourRateEur())
        .put("efficiency", machine.efficiency())
        .put("packing_waste", machine.packingWaste())
        .json();
  }
}
