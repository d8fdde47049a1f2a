package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.BITE_AFTER_LURCH;
import static org.standproud.mechanics.evidence.Vocabulary.MEAN_TABLE_PULL;
import static org.standproud.mechanics.evidence.Vocabulary.PASS_TIME;
import static org.standproud.mechanics.evidence.Vocabulary.POWER_FEED_FITTED;
import static org.standproud.mechanics.evidence.Vocabulary.TABLE_FEED_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.TABLE_HOLD_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.TABLE_PULL;

import org.standproud.mechanics.drive.TableFeed;
import org.standproud.mechanics.drive.TableLurch;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.force.AxisForce;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.time.PassPath;
import org.standproud.mechanics.time.PassTime;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/** Whether the cut pulls the table, and how long the pass takes. */
final class DriveFacts {

  private DriveFacts() {}

  static void stateLurch(PassForces forces, Setup setup, FactSheet sheet) {
    AxisForce along = forces.path().x();
    TableLurch lurch =
        TableLurch.of(
            setup.machine(),
            setup.cut(),
            along.leastN(),
            along.meanN(),
            along.greatestN(),
            forces.path().z().greatestN().times(-1));
    Basis basis =
        ForceFacts.basis(forces)
            .and(Basis.on("machine", "cut.feed", "cut.slideLocked"))
            .assuming(lurch.assumptions());
    sheet.number(TABLE_PULL, lurch.pull().greatestWithN(), basis);
    sheet.number(MEAN_TABLE_PULL, lurch.pull().meanN(), basis);
    sheet.number(TABLE_HOLD_MARGIN, lurch.holdOverPull(), basis);
    sheet.number(BITE_AFTER_LURCH, lurch.biteM(), basis);
  }

  static void stateFeed(Setup setup, FactSheet sheet) {
    TableFeed feed = TableFeed.of(setup.machine(), setup.cut(), setup.cutter().teeth());
    Basis drive = Basis.on("machine", "cut.feedDrive");
    sheet.yesNo(POWER_FEED_FITTED, feed.driveFitted(), drive);
    Basis basis = drive.and(Basis.on("cut.feedPerTooth", "cut.spindleSpeed", "cutter"));
    Band overGreatest = feed.overGreatest();
    if (overGreatest == null) {
      sheet.missing(TABLE_FEED_RATIO, "the greatest table feed of the machine under power", basis);
    } else {
      sheet.number(TABLE_FEED_RATIO, overGreatest, basis);
    }
  }

  static void stateTime(Setup setup, FactSheet sheet) {
    sheet.number(
        PASS_TIME,
        PassTime.onePassS(
            PassPath.of(setup),
            PassTime.tableFeedMPerS(
                setup.cut().feedPerToothM(),
                setup.cutter().teeth(),
                setup.cut().spindleSpeedRevPerS())),
        Basis.on("stock.length", "cut.leadIn", "cut.feedPerTooth", "cut.spindleSpeed", "cutter"));
  }
}
