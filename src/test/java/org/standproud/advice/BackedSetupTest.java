package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standproud.ComputationTest;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.Backing;
import org.standproud.setup.BackingKind;
import org.standproud.setup.Band;
import org.standproud.setup.JawSide;
import org.standproud.setup.Setup;
import org.standproud.setup.SetupBuilder;

/** A block behind the plate in the evidence of a whole set-up; common practice, no source. */
@ComputationTest
class BackedSetupTest {

  /** A tall plate that is barely gripped, pushed to the fixed jaw by a centred face mill. */
  private static final Setup TALL = DemoShop.setup("03");

  private static Evidence with(Backing... backing) {
    return EvidenceGathering.of(
        SetupBuilder.builder(TALL)
            .hold(TALL.hold().but().backing(List.of(backing)).held())
            .build());
  }

  private static Backing block(JawSide side) {
    return new Backing(
        BackingKind.BLOCK,
        side,
        0,
        TALL.stock().lengthM(),
        0.7 * TALL.stickOutM(),
        null,
        null,
        null);
  }

  private static Band band(Evidence evidence, Fact fact) {
    return ((Value.Quantity) evidence.get(fact)).band();
  }

  private static JawSide pushed() {
    Evidence bare = with();
    return band(bare, Vocabulary.PUSH_FIXED).likely()
            >= band(bare, Vocabulary.PUSH_MOVABLE).likely()
        ? JawSide.FIXED
        : JawSide.MOVABLE;
  }

  private static Fact tip(JawSide side) {
    return side == JawSide.FIXED ? Vocabulary.TIP_MARGIN_FIXED : Vocabulary.TIP_MARGIN_MOVABLE;
  }

  @Test
  void aBlockWhereTheCutPushesToHoldsThePlateFromTippingThere() {
    JawSide side = pushed();
    JawSide other = side == JawSide.FIXED ? JawSide.MOVABLE : JawSide.FIXED;
    Evidence bare = with();
    Evidence backed = with(block(side));
    assertThat(band(backed, tip(side)).likely()).isGreaterThan(band(bare, tip(side)).likely());
    assertThat(band(backed, tip(other))).isEqualTo(band(bare, tip(other)));
    assertThat(band(backed, Vocabulary.LEAST_HOLD_MARGIN).likely())
        .isGreaterThan(band(bare, Vocabulary.LEAST_HOLD_MARGIN).likely());
  }

  @Test
  void aBlockThereLessensTheSpringOfTheEdgeAndRaisesItsNote() {
    Evidence bare = with();
    Evidence backed = with(block(pushed()));
    assertThat(band(backed, Vocabulary.EDGE_DEFLECTION).likely())
        .isLessThan(band(bare, Vocabulary.EDGE_DEFLECTION).likely());
    assertThat(band(backed, Vocabulary.NATURAL_FREQUENCY).likely())
        .isGreaterThan(band(bare, Vocabulary.NATURAL_FREQUENCY).likely());
  }

  @Test
  void aBlockBesideTheEndOfThePlateTouchesNothing() {
    Backing beside =
        new Backing(
            BackingKind.BLOCK, pushed(), TALL.stock().lengthM(), 0.02, 0.03, null, null, null);
    Evidence backed = with(beside);
    assertThat(backed.get(Vocabulary.EDGE_DEFLECTION))
        .isEqualTo(with().get(Vocabulary.EDGE_DEFLECTION));
    assertThat(backed.get(Vocabulary.LEAST_HOLD_MARGIN))
        .isEqualTo(with().get(Vocabulary.LEAST_HOLD_MARGIN));
  }

  @Test
  void aBlockAsHighAsTheCutIsInItsWay() {
    Backing tooHigh =
        new Backing(BackingKind.BLOCK, JawSide.FIXED, 0, 0.03, TALL.stickOutM(), null, null, null);
    assertThat(band(with(tooHigh), Vocabulary.CLAMP_CLEARANCE).high()).isNegative();
  }
}
