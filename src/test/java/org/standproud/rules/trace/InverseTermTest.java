package org.standproud.rules.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.rules.Shop;
import org.standproud.rules.language.Condition;
import org.standproud.rules.language.ConditionParser;
import org.standproud.rules.language.Estimate;
import org.standproud.rules.language.Judgements;
import org.standproud.rules.language.Readings;
import org.standproud.rules.language.Term;
import org.standproud.setup.Band;

class InverseTermTest {

  private static final Readings READINGS =
      Shop.readings(Shop.STICK_OUT, 8.0, Shop.GRIP_DEPTH, 2.0, Shop.THICKNESS, 3.0);

  /** Each holds the stick-out once. */
  private static final String[] TERMS = {
    "stick-out",
    "stick-out + grip depth",
    "grip depth + stick-out",
    "stick-out - grip depth",
    "grip depth - stick-out",
    "stick-out * grip depth",
    "grip depth * stick-out",
    "stick-out / grip depth",
    "grip depth / stick-out",
    "-stick-out",
    "abs(grip depth - stick-out)",
    "2 * (grip depth / (stick-out + stock thickness)) - 3"
  };

  private static Term term(String written) throws Exception {
    Condition condition =
        new ConditionParser(Shop.TABLE, Set.of()).parse(written + " > " + written, Map.of());
    return ((Condition.Comparison) condition).left();
  }

  private static double value(String written, double wanted) throws Exception {
    double[] values =
        new InverseTerm(Shop.STICK_OUT, READINGS.atLikely(), Judgements.NONE)
            .value(term(written), Estimate.Known.exactly(wanted));
    return values == null ? Double.NaN : values[0];
  }

  /** Put in the place of the fact, it makes the term come to what was wanted. */
  @Property
  void whatIsFoundMakesTheTermComeToTheNumber(
      @ForAll @IntRange(min = 0, max = 11) int which,
      @ForAll @DoubleRange(min = -50, max = 50) double wanted)
      throws Exception {
    double found = value(TERMS[which], wanted);
    if (Double.isFinite(found)
        && term(TERMS[which])
                .estimate(
                    READINGS.atLikely().with(Shop.STICK_OUT, Band.exactly(found)), Judgements.NONE)
            instanceof Estimate.Known known) {
      assertThat(known.band().likely()).isCloseTo(wanted, Offset.offset(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "stick-out / grip depth, 2.5, 5",
    "grip depth / stick-out, 0.1, 20",
    "stock thickness - stick-out, 1, 2",
    "stick-out - stock thickness, 1, 4",
    "-stick-out, -7, 7",
    "abs(stick-out - grip depth), 4, 6",
    "abs(grip depth - stick-out), 4, 6",
    "grip depth * (stick-out + stock thickness), 30, 12",
    "'max(stick-out, grip depth)', 4, 4",
    "'min(stick-out, stock thickness)', 2.5, 2.5"
  })
  void byHand(String written, double wanted, double expected) throws Exception {
    assertThat(value(written, wanted)).isEqualTo(expected);
  }

  @ParameterizedTest
  @CsvSource({
    "stick-out * stick-out, 4",
    "'max(stick-out, grip depth)', 1",
    "'min(stick-out, grip depth)', 4",
    "'max(stick-out, 2 * stick-out)', 4",
    "abs(stick-out), -1",
    "grip depth / stick-out, -1",
    "grip depth, 4"
  })
  void whatCannotBeSolvedIsNot(String written, double wanted) throws Exception {
    assertThat(value(written, wanted)).isNaN();
  }
}
