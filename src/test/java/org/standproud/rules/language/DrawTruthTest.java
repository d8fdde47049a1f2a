package org.standproud.rules.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.mechanics.evidence.DrawSet;

class DrawTruthTest {

  /** One letter a draw: T holds, F does not, U is not known, G lets go. */
  private static DrawTruth draws(String letters) {
    return DrawTruth.of(
        DrawSet.where(letters.length(), d -> letters.charAt(d) == 'T'),
        DrawSet.where(letters.length(), d -> letters.charAt(d) == 'F'),
        DrawSet.where(letters.length(), d -> letters.charAt(d) == 'U'));
  }

  private static String random(Random random, int draws) {
    StringBuilder letters = new StringBuilder();
    for (int i = 0; i < draws; i++) {
      letters.append("TFUG".charAt(random.nextInt(4)));
    }
    return letters.toString();
  }

  /** True, false and null as in the truth tables of FEEL (OMG DMN 1.3, table 50, from memory). */
  @Test
  void twoConditionsAreJoinedDrawByDraw() {
    DrawTruth a = draws("TTTFFFUUUTFUG");
    DrawTruth b = draws("TFUTFUTFUGGGG");
    assertThat(a.and(b)).isEqualTo(draws("TFUFFFUFUGFUG")).isEqualTo(b.and(a));
    assertThat(a.or(b)).isEqualTo(draws("TTTTFUTUUTGUG")).isEqualTo(b.or(a));
    assertThat(a.not()).isEqualTo(draws("FFFTTTUUUFTUG"));
  }

  @Property(tries = 200)
  void theLawsOfLogicHold(@ForAll long seed) {
    Random random = new Random(seed);
    DrawTruth a = draws(random(random, 70));
    DrawTruth b = draws(random(random, 70));
    DrawTruth c = draws(random(random, 70));
    assertThat(a.not().not()).isEqualTo(a);
    assertThat(a.and(b).not()).isEqualTo(a.not().or(b.not()));
    assertThat(a.and(b).and(c)).isEqualTo(a.and(b.and(c)));
  }

  /** What is alike in every draw gives the same whether written once or for each draw. */
  @Property(tries = 100)
  void oneDrawStandsForAll(@ForAll long seed) {
    Random random = new Random(seed);
    DrawTruth many = draws(random(random, 70));
    for (String one : new String[] {"T", "F", "U", "G"}) {
      DrawTruth each = draws(one.repeat(70));
      assertThat(many.and(draws(one))).isEqualTo(many.and(each));
      assertThat(draws(one).and(many)).isEqualTo(many.and(each));
      assertThat(many.or(draws(one))).isEqualTo(many.or(each));
    }
    assertThat(many.and(DrawTruth.TRUE)).isEqualTo(many);
    assertThat(many.and(DrawTruth.FALSE).truth()).isEqualTo(Truth.FALSE);
  }

  @ParameterizedTest
  @CsvSource({
    "TTTT, TRUE, 1",
    "FFFF, FALSE, 0",
    "FFGF, UNKNOWN, 0",
    "GGGG, UNKNOWN, 0",
    "TTFT, EITHER, 0.75",
    "TGTT, EITHER, 0.75",
    "TUFT, UNKNOWN, 0.5",
    "FFFU, UNKNOWN, 0"
  })
  void allDrawsAreOneWordAndAShare(String letters, Truth truth, double share) {
    assertThat(draws(letters).truth()).isEqualTo(truth);
    assertThat(draws(letters).share()).isEqualTo(share);
  }

  @Test
  void moreThanAShareIsMoreAndNotAsMuch() {
    DrawTruth truth = draws("T" + "U" + "F".repeat(18));
    assertThat(truth.exceeds(0.05)).isFalse();
    assertThat(truth.exceeds(0.04)).isTrue();
    assertThat(truth.mayExceed(0.05)).isTrue();
    assertThat(truth.mayExceed(0.10)).isFalse();
    assertThat(draws("F" + "T".repeat(19)).holdsBut(0.05)).isTrue();
    assertThat(draws("U" + "T".repeat(19)).holdsBut(0.04)).isFalse();
  }
}
