package plyworth.workbench.desktop.brief;

import java.util.Optional;
import plyworth.shared.brief.Machine;

/** The filling machine in the form. */
final class MachineEntries {

  private MachineEntries() {}

  static void write(Machine machine, BriefDraft.Writing draft) {
    draft
        .put(BriefField.MACHINE_NAME, machine.name())
        .put(BriefField.LANES, machine.lanes())
        .put(BriefField.JAW, machine.jawC())
        .put(BriefField.JAW_SPREAD, machine.jawSpreadK())
        .put(BriefField.CONTACT, machine.contactWm2K())
        .put(BriefField.DWELL, machine.dwellS())
        .put(BriefField.SEAL_ZONE, machine.zone())
        .put(BriefField.FEED, machine.feedMs())
        .put(BriefField.FEED_ACCELERATION, machine.accelerationMs2())
        .put(BriefField.JAW_TRAVEL, machine.jawTravelS())
        .put(BriefField.DWELL_FACTOR, machine.dwellFactor())
        .put(BriefField.COOLING, machine.coolS())
        .put(BriefField.FILL_LIMIT, machine.fillLimitPerMinute())
        .put(BriefField.HOUR_RATE, machine.hourRateEur())
        .put(BriefField.EFFICIENCY, machine.efficiency())
        .put(BriefField.PACKING_WASTE, machine.packingWaste());
  }

  static Optional<Machine> read(BriefAnswers answers) {
    return answers.made(
        BriefField.MACHINE_NAME,
        () ->
            new Machine(
                answers.words(BriefField.MACHINE_NAME),
                answers.whole(BriefField.LANES),
                answers.figure(BriefField.JAW),
                answers.figure(BriefField.JAW_SPREAD),
                answers.figure(BriefField.CONTACT),
                answers.figure(BriefField.DWELL),
                answers.choice(BriefField.SEAL_ZONE, Machine.SealZone.values()),
                answers.figure(BriefField.FEED),
                answers.figure(BriefField.FEED_ACCELERATION),
                answers.figure(BriefField.JAW_TRAVEL),
                answers.figure(BriefField.DWELL_FACTOR),
                answers.figure(BriefField.COOLING),
                answers.figure(BriefField.FILL_LIMIT),
                answers.figure(BriefField.HOUR_RATE),
                answers.figure(BriefField.EFFICIENCY),
                answers.figure(BriefField.PACKING_WASTE)));
  }
}
