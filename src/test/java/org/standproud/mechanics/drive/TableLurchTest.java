package org.standproud.mechanics.drive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Machine;
import org.standproud.setup.MachineBuilder;
import org.standproud.setup.Operation;
import org.standproud.setup.Stage;

class TableLurchTest {

  private static final PublishedTable TABLE =
      new PublishedTable(
          Subject.DRIVE, "friction of the table, mu m g with g 9.81", SourceTag.DERIVED);

  private static final Band NONE = Band.exactly(0);

  private static Machine mill(double massKg, Band friction, boolean preloaded) {
    Machine m = SmallShop.kneeMill();
    return MachineBuilder.builder(m)
        .preloadedScrew(preloaded)
        .movingMassKg(massKg)
        .slideFriction(friction)
        .gibPreloadN(NONE)
        .build();
  }

  private static Cut cut(FeedDirection feed, FeedDrive drive, @Nullable Boolean locked) {
    return CutBuilder.builder()
        .operation(Operation.BROAD_SIDE)
        .stage(Stage.ROUGH)
        .axialDepthM(.003)
        .offsetM(-.012)
        .feed(feed)
        .spindleSpeedRevPerS(4)
        .feedPerToothM(Band.exactly(.08e-3))
        .feedDrive(drive)
        .slideLocked(locked)
        .otherSlidesLocked(true)
        .leadInM(.03)
        .build();
  }

  /** A pull of one sign with the table, for a cutter fed toward +X: the force on the work is -X. */
  private static TableLurch pulled(Machine machine, Cut cut, double pullN) {
    double sign = cut.feed() == FeedDirection.PLUS_X ? -1 : 1;
    Band peak = Band.exactly(sign * pullN);
    Band least = sign < 0 ? peak : NONE;
    Band greatest = sign < 0 ? NONE : peak;
    return TableLurch.of(machine, cut, least, Band.exactly(sign * pullN / 2), greatest, NONE);
  }

  /** 150 kg at mu .15 holds 220.7 N (g 9.81) against a tooth of 151.8 N: no lurch [derived]. */
  @Tag(PublishedTable.TESTS)
  @Test
  void aHeavyTableStaysOnItsScrew() {
    TableLurch heavy =
        pulled(
            mill(150, Band.exactly(.15), false),
            cut(FeedDirection.PLUS_X, FeedDrive.POWER, false),
            151.8);

    TABLE.row("150 kg, mu .15").figure("hold", "N", 220.7, heavy.holdN().likely(), .1);
    assertThat(heavy.holdOverPull().low()).isGreaterThan(1);
    assertThat(heavy.lurchM()).isEqualTo(NONE);
    assertThat(heavy.biteM().high()).isCloseTo(.08e-3, within(1e-12));
  }

  /** 60 kg at mu .10 holds 58.9 N (g 9.81) [derived]: the table lurches by up to the backlash. */
  @Tag(PublishedTable.TESTS)
  @Test
  void aLightSlipperyTableLurchesAndTheNextToothBitesTheBacklash() {
    TableLurch light =
        pulled(
            mill(60, Band.exactly(.10), false),
            cut(FeedDirection.PLUS_X, FeedDrive.POWER, false),
            151.8);

    TABLE.row("60 kg, mu .10").figure("hold", "N", 58.9, light.holdN().likely(), .1);
    assertThat(light.holdOverPull().high()).isLessThan(1);
    assertThat(light.lurchM().high()).isEqualTo(.3e-3);
    assertThat(light.biteM().high()).isCloseTo(.38e-3, within(1e-12));
  }

  @Test
  void aPreloadedScrewNeverLurches() {
    TableLurch preloaded =
        pulled(
            mill(60, Band.exactly(.10), true),
            cut(FeedDirection.PLUS_X, FeedDrive.POWER, false),
            1000);
    assertThat(preloaded.lurchM()).isEqualTo(NONE);
    assertThat(preloaded.holdOverPull().high()).isLessThan(1);
  }

  @Test
  void aCutterFedTowardPlusXHasATableGoingTowardMinusX() {
    TablePull toMinus =
        TablePull.of(
            FeedDirection.PLUS_X, Band.exactly(-300), Band.exactly(-100), Band.exactly(50));
    assertThat(toMinus.meanN().likely()).isEqualTo(100);
    assertThat(toMinus.greatestWithN().likely()).isEqualTo(300);
    assertThat(toMinus.greatestAgainstN().likely()).isEqualTo(50);
  }

  @Test
  void aForceAgainstTheTableNeverPullsIt() {
    TablePull against =
        TablePull.of(
            FeedDirection.MINUS_X, Band.exactly(-300), Band.exactly(-100), Band.exactly(-50));
    assertThat(against.greatestWithN()).isEqualTo(NONE);
    TableLurch still =
        TableLurch.of(
            mill(1, Band.exactly(.01), false),
            cut(FeedDirection.MINUS_X, FeedDrive.POWER, false),
            Band.exactly(-300),
            Band.exactly(-100),
            Band.exactly(-50),
            NONE);
    assertThat(still.lurchM()).isEqualTo(NONE);
    assertThat(still.holdOverPull().likely()).isLessThanOrEqualTo(TableLurch.NO_PULL);
  }

  @Property
  void turningFeedAndForcesRoundChangesNothing(
      @ForAll @Scale(2) @DoubleRange(min = -1000, max = 0) double least,
      @ForAll @Scale(2) @DoubleRange(min = 0, max = 1000) double greatest) {
    double mean = (least + greatest) / 2;
    TablePull plus =
        TablePull.of(
            FeedDirection.PLUS_X, Band.exactly(least), Band.exactly(mean), Band.exactly(greatest));
    TablePull minus =
        TablePull.of(
            FeedDirection.MINUS_X,
            Band.exactly(-greatest),
            Band.exactly(-mean),
            Band.exactly(-least));
    assertThat(plus.greatestWithN().likely()).isEqualTo(minus.greatestWithN().likely());
    assertThat(plus.greatestAgainstN().likely()).isEqualTo(minus.greatestAgainstN().likely());
    assertThat(plus.meanN().likely()).isEqualTo(minus.meanN().likely());
  }

  @Property
  void moreMassOrFrictionNeverLoosensTheTable(
      @ForAll @Scale(2) @DoubleRange(min = 1, max = 500) double massKg,
      @ForAll @Scale(4) @DoubleRange(min = .01, max = .3) double mu,
      @ForAll @Scale(1) @DoubleRange(min = 0, max = 5000) double pullN) {
    Cut cut = cut(FeedDirection.PLUS_X, FeedDrive.POWER, false);
    TableLurch loose = pulled(mill(massKg, Band.exactly(mu), false), cut, pullN);
    TableLurch tight = pulled(mill(massKg + 10, Band.exactly(mu + .02), false), cut, pullN);
    assertThat(tight.holdOverPull().low()).isGreaterThanOrEqualTo(loose.holdOverPull().low());
    assertThat(tight.lurchM().high()).isLessThanOrEqualTo(loose.lurchM().high());
  }

  @Test
  void aHandFeedsFromHalfToTwiceOfWhatWasMeant() {
    Cut byHand = cut(FeedDirection.PLUS_X, FeedDrive.HAND, false);
    assertThat(HandFeed.feedPerToothM(byHand)).isEqualTo(new Band(.04e-3, .08e-3, .16e-3));
    TableLurch lurch = pulled(mill(150, Band.exactly(.15), false), byHand, 10);
    assertThat(lurch.assumptions()).contains(HandFeed.ASSUMPTION);
  }

  /** .08 mm a tooth, 4 teeth, 4 turns a second: 1.28 mm/s against 10 mm/s of the small shop. */
  @Test
  void aPowerFeedIsSetAgainstTheGreatestAndAHandWheelIsAlwaysThere() {
    Machine machine = mill(150, Band.exactly(.15), false);
    TableFeed power = TableFeed.of(machine, cut(FeedDirection.PLUS_X, FeedDrive.POWER, false), 4);
    TableFeed hand = TableFeed.of(machine, cut(FeedDirection.PLUS_X, FeedDrive.HAND, false), 4);

    assertThat(power.feedMPerS().likely()).isCloseTo(1.28e-3, within(1e-12));
    assertThat(power.driveFitted()).isTrue();
    assertThat(power.overGreatest()).isNotNull();
    assertThat(power.overGreatest().likely()).isCloseTo(.128, within(1e-12));
    assertThat(hand.overGreatest()).isNull();
    assertThat(hand.feedMPerS().high()).isCloseTo(2.56e-3, within(1e-12));
  }

  @Test
  void aPartlyLockedSlideHoldsMoreAndAnUnknownOneIsNotCountedOn() {
    Machine machine = mill(60, Band.exactly(.10), false);
    Cut locked = cut(FeedDirection.PLUS_X, FeedDrive.POWER, true);
    Cut free = cut(FeedDirection.PLUS_X, FeedDrive.POWER, false);
    Cut unknown = cut(FeedDirection.PLUS_X, FeedDrive.POWER, null);

    assertThat(TableFriction.of(machine, locked, NONE).holdN().low())
        .isCloseTo(TableFriction.of(machine, free, NONE).holdN().low() + 100, within(1e-9));
    assertThat(TableFriction.of(machine, unknown, NONE).holdN().low())
        .isEqualTo(TableFriction.of(machine, free, NONE).holdN().low());
    assertThat(TableFriction.of(machine, unknown, NONE).assumptions()).hasSize(1);
  }

  @Test
  void aCutThatLiftsTheTableTakesFromItsWeightAndNeverPushesItsHoldBelowNothing() {
    Machine machine = mill(60, Band.exactly(.10), false);
    Cut cut = cut(FeedDirection.PLUS_X, FeedDrive.POWER, false);
    assertThat(TableFriction.of(machine, cut, Band.exactly(-2000)).holdN()).isEqualTo(NONE);
    assertThat(TableFriction.of(machine, cut, Band.exactly(100)).holdN().likely())
        .isCloseTo(58.84 + 10, within(.01));
    assertThatThrownBy(() -> TableFriction.of(machine, cut, Band.exactly(1e7)))
        .isInstanceOf(OutsideValidity.class);
  }
}
