package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.BITE_AFTER_LURCH;
import static org.standproud.mechanics.evidence.Vocabulary.MEAN_TABLE_PULL;
import static org.standproud.mechanics.evidence.Vocabulary.PASS_TIME;
import static org.standproud.mechanics.evidence.Vocabulary.POWER_FEED_FITTED;
import static org.standproud.mechanics.evidence.Vocabulary.TABLE_FEED_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.TABLE_HOLD_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.TABLE_PULL;

import java.util.function.IntToDoubleFunction;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.drive.TableFeed;
import org.standproud.mechanics.drive.TableFriction;
import org.standproud.mechanics.drive.TableLurch;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.mechanics.time.PassPath;
import org.standproud.mechanics.time.PassTime;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Machine;
import org.standproud.setup.Setup;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.request.StockFields;

/** Whether the cut pulls the table, and how long the pass takes. */
final class DriveFacts {

  private static final double LEAST_PULL_N = 1e-3;

  private DriveFacts() {}

  static void stateLurch(DrawnCut cut, FactSheet sheet) {
    Machine machine = cut.setup().machine();
    Cut planned = cut.setup().cut();
    JointSample sample = cut.sample();
    OutsideValidity.within("backlash", machine.backlashM(), 0, 0.02, "m");
    OutsideValidity.within("moving mass", machine.movingMassKg(), 0, 1e5, "kg");
    // The table goes against the feed of the cutter: a force that way unloads the screw.
    boolean forward = planned.feed() == FeedDirection.PLUS_X;
    IntToDoubleFunction pullN =
        cut.ofPass(p -> Math.max(0, forward ? -p.peaks().leastXN() : p.peaks().greatestXN()));
    IntToDoubleFunction liftN = cut.ofPass(p -> p.peaks().greatestZN());
    IntToDoubleFunction holdOverPull =
        draw ->
            Math.min(
                TableLurch.NO_PULL,
                TableFriction.holdN(
                        machine,
                        -liftN.applyAsDouble(draw),
                        sample.at(Unknown.SLIDE_FRICTION, draw),
                        sample.at(Unknown.GIB, draw),
                        sample.at(Unknown.SLIDE_LOCK, draw))
                    / Math.max(pullN.applyAsDouble(draw), LEAST_PULL_N));
    Basis basis =
        ForceFacts.basis(cut)
            .and(Basis.on(RequestFields.MACHINE, CutFields.FEED, CutFields.SLIDE_LOCKED))
            .assuming(TableFriction.lockAssumptions(planned.slideLocked()))
            .assuming(HandFeed.assumptions(planned));
    int n = cut.draws();
    sheet.number(TABLE_PULL, n, pullN, basis);
    sheet.number(MEAN_TABLE_PULL, n, cut.ofPass(p -> forward ? -p.meanXN() : p.meanXN()), basis);
    sheet.number(TABLE_HOLD_MARGIN, n, holdOverPull, basis);
    sheet.number(
        BITE_AFTER_LURCH,
        n,
        draw ->
            sample.at(Unknown.FEED, draw)
                + (machine.preloadedScrew() || holdOverPull.applyAsDouble(draw) >= 1
                    ? 0
                    : machine.backlashM()),
        basis);
  }

  static void stateFeed(Setup setup, JointSample sample, FactSheet sheet) {
    TableFeed feed = TableFeed.of(setup.machine(), setup.cut(), setup.cutter().teeth());
    Basis drive = Basis.on(RequestFields.MACHINE, CutFields.FEED_DRIVE);
    sheet.yesNo(POWER_FEED_FITTED, feed.driveFitted(), drive);
    Basis basis =
        drive.and(Basis.on(CutFields.FEED_PER_TOOTH, CutFields.SPINDLE, RequestFields.CUTTER));
    Band overGreatest = feed.overGreatest();
    if (overGreatest == null) {
      sheet.missing(TABLE_FEED_RATIO, basis);
    } else {
      double perFeed = overGreatest.likely() / setup.cut().feedPerToothM().likely();
      sheet.number(
          TABLE_FEED_RATIO, sample.draws(), draw -> perFeed * sample.at(Unknown.FEED, draw), basis);
    }
  }

  static void stateTime(Setup setup, JointSample sample, FactSheet sheet) {
    sample.check();
    Cut cut = setup.cut();
    double wayM = PassPath.of(setup).lengthM();
    double perFeed =
        PassTime.tableFeedMPerS(
                    Band.exactly(cut.feedPerToothM().likely()),
                    setup.cutter().teeth(),
                    cut.spindleSpeedRevPerS())
                .likely()
            / cut.feedPerToothM().likely();
    sheet.number(
        PASS_TIME,
        sample.draws(),
        draw -> wayM / (perFeed * sample.at(Unknown.FEED, draw)),
        Basis.on(
            StockFields.LENGTH_X,
            CutFields.LEAD_IN,
            CutFields.FEED_PER_TOOTH,
            CutFields.SPINDLE,
            RequestFields.CUTTER));
  }
}
