package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standproud.rules.language.Truth.EITHER;
import static org.standproud.rules.language.Truth.FALSE;
import static org.standproud.rules.language.Truth.TRUE;
import static org.standproud.rules.language.Truth.UNKNOWN;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TruthTest {

  @ParameterizedTest
  @CsvSource({
    "TRUE,TRUE,TRUE,TRUE",
    "TRUE,FALSE,FALSE,TRUE",
    "TRUE,EITHER,EITHER,TRUE",
    "TRUE,UNKNOWN,UNKNOWN,TRUE",
    "FALSE,FALSE,FALSE,FALSE",
    "FALSE,EITHER,FALSE,EITHER",
    "FALSE,UNKNOWN,FALSE,UNKNOWN",
    "EITHER,EITHER,EITHER,EITHER",
    "EITHER,UNKNOWN,UNKNOWN,UNKNOWN",
    "UNKNOWN,UNKNOWN,UNKNOWN,UNKNOWN"
  })
  void twoConditionsAreJoinedInEitherOrder(Truth a, Truth b, Truth both, Truth one) {
    assertThat(a.and(b)).isEqualTo(both).isEqualTo(b.and(a));
    assertThat(a.or(b)).isEqualTo(one).isEqualTo(b.or(a));
  }

  @Test
  void whatCannotBeSaidStaysUnsaidWhenTurnedRound() {
    assertThat(TRUE.not()).isEqualTo(FALSE);
    assertThat(FALSE.not()).isEqualTo(TRUE);
    assertThat(EITHER.not()).isEqualTo(EITHER);
    assertThat(UNKNOWN.not()).isEqualTo(UNKNOWN);
  }

  @ParameterizedTest
  @EnumSource(Truth.class)
  void turningRoundTwiceChangesNothing(Truth a) {
    assertThat(a.not().not()).isEqualTo(a);
    for (Truth b : Truth.values()) {
      assertThat(a.and(b).not()).isEqualTo(a.not().or(b.not()));
      for (Truth c : Truth.values()) {
        assertThat(a.and(b).and(c)).isEqualTo(a.and(b.and(c)));
      }
    }
  }
}
