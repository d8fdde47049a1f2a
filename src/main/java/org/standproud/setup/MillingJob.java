package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;

/**
 * A whole job: a blank that is to become a finished plate, checked and in SI units.
 *
 * @param reference what it is for
 * @param blank what it starts from
 * @param finished what it ends with; no size of it is larger than that of the blank
 * @param machine the machine
 * @param shelf what is on hand
 * @param feedDrive hand or power feed
 * @param hardestPull the hardest pull on the handle that may be planned
 * @param handleTorqueNm the torque that each pull up to that one leaves on the screw in N m
 * @param units the caller's units, for the answer
 */
@RecordBuilder
public record MillingJob(
    JobReference reference,
    Blank blank,
    FinishedPart finished,
    Machine machine,
    Shelf shelf,
    FeedDrive feedDrive,
    HandleEffort hardestPull,
    Map<HandleEffort, Band> handleTorqueNm,
    UnitSystem units) {

  /** Copies the map. */
  public MillingJob {
    handleTorqueNm = Map.copyOf(handleTorqueNm);
  }
}
