package org.standproud.mechanics.engagement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.Spin;

/**
 * Worked by hand: D 80 over stock 60 wide and 200 long, centred. Straight ahead the circle reaches
 * 40 mm out; at the sides of the stock sqrt(40^2 - 30^2) = 26.458 mm.
 */
class PassTravelTest {

  private static final PassFixture WIDE = PassFixture.pass(80, 6, 60, 0, 0.15);

  private static PassTravel travel(PassFixture pass) {
    Engagement.Cutting cutting = pass.cutting();
    return PassTravel.of(cutting.geometry(), cutting.arc());
  }

  @Test
  void theCutFillsBetweenTheFirstTouchAndTheSidesOfTheStockAndEmptiesTheSameWay() {
    PassTravel travel = travel(WIDE);
    assertThat(travel.firstContactM()).isCloseTo(-0.040, within(1e-9));
    assertThat(travel.leadInEndM()).isCloseTo(-0.026458, within(1e-6));
    assertThat(travel.runOutStartM()).isCloseTo(0.160, within(1e-9));
    assertThat(travel.lastContactM()).isCloseTo(0.173542, within(1e-6));
    assertThat(travel.reachesSteady()).isTrue();
  }

  /** 13.542 mm lie between first touch and whole arc: a shorter stock never fills it. */
  @Test
  void aStockShorterThanTheFillingIsNeverCutWithTheWholeArc() {
    assertThat(travel(WIDE.ofLength(13.6)).reachesSteady()).isTrue();
    assertThat(travel(WIDE.ofLength(13.5)).reachesSteady()).isFalse();
    assertThat(new PassTravel(-1, 0.5, 0.5, 2).reachesSteady()).isTrue();
  }

  @Test
  void theSteadyStretchHoldsBothItsEnds() {
    PassTravel travel = travel(WIDE);
    assertThat(travel.stretchAt(travel.leadInEndM())).isEqualTo(PassStretch.STEADY);
    assertThat(travel.stretchAt(travel.runOutStartM())).isEqualTo(PassStretch.STEADY);
    assertThat(travel.stretchAt(-0.027)).isEqualTo(PassStretch.LEAD_IN);
    assertThat(travel.stretchAt(0.161)).isEqualTo(PassStretch.RUN_OUT);
  }

  /** The stock of 200 mm begins at x = -100 mm for a feed toward +x and at +100 mm back. */
  @Test
  void theAxisStandsAtTheEndWhereThePassStarts() {
    PassGeometry there = WIDE.cutting().geometry();
    assertThat(there.viseX(0)).isCloseTo(-0.100, within(1e-12));
    assertThat(there.viseX(0.03)).isCloseTo(-0.070, within(1e-12));
    PassGeometry back = WIDE.turning(Spin.CLOCKWISE, FeedDirection.MINUS_X).cutting().geometry();
    assertThat(back.viseX(0.03)).isCloseTo(0.070, within(1e-12));
  }
}
