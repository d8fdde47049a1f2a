package org.standproud.advice.whatif;

import org.standproud.setup.Band;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineKind;

/**
 * Time from the end of one pass to the start of the next: table back, chips away, depth set. Common
 * practice, no source.
 */
public final class PassHandling {

  private static final Band BY_HAND_S = new Band(20, 40, 90);
  private static final Band BY_PROGRAM_S = new Band(3, 6, 15);

  private PassHandling() {}

  /** The time in s between two passes on a machine. */
  public static Band betweenS(Machine machine) {
    return machine.kind() == MachineKind.CNC ? BY_PROGRAM_S : BY_HAND_S;
  }

  /**
   * Likely time in s of passes with the time between them.
   *
   * @param passes number of passes, at least 1
   * @param passS time of one pass in s
   * @param machine the machine
   */
  public static double likelyS(int passes, double passS, Machine machine) {
    return passes * passS + (passes - 1) * betweenS(machine).likely();
  }
}
