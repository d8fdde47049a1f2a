package org.standproud.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;

/** Confidence is made of its three parts and says so. */
class ConfidenceTest {

  static List<String> names() {
    return DemoShop.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void theLevelIsTheProductOfItsPartsAndTheSourceIsThatOfTheCard(String name) {
    Evidence evidence = EvidenceGathering.of(DemoShop.setup(name));
    for (CardTrace card : DemoShop.CARDS.evaluate(evidence).findings()) {
      Confidence confidence = Confidence.of(card, evidence);
      assertThat(confidence.source().words())
          .isEqualTo(card.card().confidence().name().toLowerCase(Locale.ROOT));
      assertThat(confidence.level())
          .isEqualTo(
              Grade.product(confidence.source(), confidence.completeness(), confidence.distance()));
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void whatIsOpenOrMayEitherWayIsFarFromSure(String name) {
    Evidence evidence = EvidenceGathering.of(DemoShop.setup(name));
    for (CardTrace card : DemoShop.CARDS.evaluate(evidence).findings()) {
      Confidence confidence = Confidence.of(card, evidence);
      if (card.truth() != Truth.TRUE) {
        boolean likely = card.kind() == Kind.FAIL && card.share() > 0.5;
        assertThat(confidence.distance()).isEqualTo(likely ? Grade.MEDIUM : Grade.LOW);
      }
      if (card.kind() == Kind.OPEN) {
        assertThat(confidence.completeness()).isEqualTo(Grade.LOW);
      }
    }
  }
}
