package org.standproud.mechanics.holding.jaw;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standproud.advice.DemoShop;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.Band;
import org.standproud.setup.Hold;
import org.standproud.setup.JawFaces;
import org.standproud.setup.Setup;

/** What is on the faces that grip: oil lowers friction; what is not given may be oily or dry. */
class FaceStateTest {

  private static Band friction(JawFaces faces) {
    Setup setup = DemoShop.setup("03");
    Hold hold = setup.hold().but().faces(faces).held();
    Setup changed =
        new Setup(
            setup.job(),
            setup.stock(),
            hold,
            setup.machine(),
            setup.cutter(),
            setup.cut(),
            setup.passes(),
            setup.units());
    Value value = EvidenceGathering.of(changed).get(Vocabulary.JAW_FRICTION);
    return ((Value.Quantity) value).band();
  }

  @Test
  void dryFacesHoldBetterThanOilyOnes() {
    assertThat(friction(JawFaces.DRY).low()).isGreaterThan(friction(JawFaces.OILY).low());
    assertThat(friction(JawFaces.DRY).high()).isGreaterThan(friction(JawFaces.OILY).high());
  }

  @Test
  void wipedFacesHoldNoBetterThanDryAndNoWorseThanOilyOnes() {
    assertThat(friction(JawFaces.WIPED).low())
        .isBetween(friction(JawFaces.OILY).low(), friction(JawFaces.DRY).low());
  }

  /** Saying what is known narrows the answer to one side or the other. */
  @Test
  void facesThatAreNotGivenLieBetweenOilyAndDryOnesAndAreWiderThanEither() {
    Band unknown = friction(null);
    Band oily = friction(JawFaces.OILY);
    Band dry = friction(JawFaces.DRY);
    assertThat(unknown.low()).isBetween(oily.low(), dry.low());
    assertThat(unknown.likely()).isBetween(oily.likely(), dry.likely());
    assertThat(unknown.high()).isBetween(oily.high(), dry.high());
    assertThat(unknown.high() - unknown.low())
        .isGreaterThan(oily.high() - oily.low())
        .isGreaterThan(dry.high() - dry.low());
  }
}
