package org.standproud.mechanics.coupling;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.force.AxisForce;
import org.standproud.mechanics.force.PathForces;
import org.standproud.mechanics.force.PathPeaks;
import org.standproud.mechanics.holding.slip.HoldingLoad;
import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.mechanics.reach.SmallShop;
import org.standproud.setup.Band;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;

class EndLoadTest {

  private static final Setup PLATE =
      SmallShop.plate(
          SmallShop.faceMill(), SmallShop.pass(Operation.TOP_EDGE, .001, 0, FeedDirection.PLUS_X));

  private static final Band NONE = Band.exactly(0);

  private static HoldingLoad load(Band leastY, Band greatestY) {
    AxisForce still = new AxisForce(NONE, NONE, NONE);
    AxisForce y = new AxisForce(greatestY, NONE, leastY);
    return EndLoad.of(new PathForces(List.of(), still, y, still, NONE), PLATE);
  }

  /** Worked by hand: a fifth of 400 is 80, of 600 is 120. */
  @Test
  void aPlatePushedTowardOneJawSpringsBackTowardTheOtherByAFifth() {
    HoldingLoad load = load(NONE, new Band(300, 400, 600));
    assertThat(load.adverse()).isEqualTo(new Peaks(0, 0, 600, 120, 0, 0));
    assertThat(load.likely()).isEqualTo(new Peaks(0, 0, 400, 80, 0, 0));
    assertThat(load.favourable()).isEqualTo(new Peaks(0, 0, 300, 60, 0, 0));
    HoldingLoad mirrored = load(new Band(-600, -400, -300), NONE);
    assertThat(mirrored.adverse()).isEqualTo(new Peaks(0, 0, 120, 600, 0, 0));
  }

  @Test
  void aPushThatIsGreaterThanTheReboundStandsAsItIs() {
    assertThat(load(Band.exactly(-90), Band.exactly(400)).likely())
        .isEqualTo(new Peaks(0, 0, 400, 90, 0, 0));
  }

  @Test
  void aDrawnPassAsksWhatThePassOfTheBandsAsks() {
    assertThat(EndLoad.peaks(new PathPeaks(-10, 20, 0, 400, -30, 40)))
        .isEqualTo(new Peaks(20, 10, 400, 80, 40, 30));
    assertThat(EndLoad.peaks(new PathPeaks(-10, 20, -400, 0, -30, 40)))
        .isEqualTo(new Peaks(20, 10, 80, 400, 40, 30));
  }

  @Test
  void theCutStandsAtTheEndOfTheStockWhereItsLeverIsLongest() {
    HoldingLoad place = EndLoad.place(PLATE);
    assertThat(place.xPositionM()).isEqualTo(PLATE.stock().lengthM() / 2);
    assertThat(place.heightAboveJawM()).isEqualTo(PLATE.stickOutM());
    assertThat(place.offCentreYM()).as("half of 10 mm").isEqualTo(.005);
    assertThat(place.adverse()).isEqualTo(new Peaks(0, 0, 0, 0, 0, 0));
  }
}
