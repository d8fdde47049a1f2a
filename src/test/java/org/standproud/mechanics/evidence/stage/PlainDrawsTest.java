package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.advice.DemoShop;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.setup.Setup;

/**
 * The percentiles of the main facts of 256 draws against plain pseudo-random draws of the same
 * distributions. The share of plain draws below a percentile p of n draws scatters at most like a
 * binomial one, by the root of p (1 - p)/n: 1.4 % at a twentieth and 3.1 % at the median of 256.
 * Four of that are allowed: among the four hundred comparisons one in a hundred runs would pass it
 * by chance, at three every other run.
 *
 * <p>In a build the plain draws are few; {@code mvn test -Dtest=PlainDrawsTest
 * -Dplain.draws=200000} takes as many as a percentile to a thousandth wants.
 */
class PlainDrawsTest {

  private static final int PLAIN = Integer.getInteger("plain.draws", 4_000);

  /** As many at a time as fit into a small heap. */
  private static final int AT_A_TIME = 4_000;

  /** Fewer draws that hold have no percentiles worth a look. */
  private static final int LEAST_DRAWS = 64;

  private static final double DEVIATIONS = 4;

  @ParameterizedTest
  @ValueSource(strings = {"01", "02", "03", "04", "05", "06", "07", "08", "09", "10", "11", "12"})
  void plainDrawsFallBelowThePercentilesOfTheMainFactsAsOftenAsTheySay(String name) {
    Setup setup = DemoShop.setup(name);
    Map<String, double[]> few = facts(setup, JointSample.of(setup));
    Map<String, double[]> plain = new LinkedHashMap<>();
    for (int seed = 0; seed < (PLAIN + AT_A_TIME - 1) / AT_A_TIME; seed++) {
      facts(setup, JointSample.random(setup, Math.min(PLAIN, AT_A_TIME), 100L + seed))
          .forEach((fact, values) -> plain.merge(fact, values, PlainDrawsTest::joined));
    }
    assertThat(few).containsKeys("hold", "tip toward the fixed jaw", "tip away from it");
    few.forEach((fact, values) -> compare(fact, values, plain.getOrDefault(fact, new double[0])));
  }

  private static void compare(String fact, double[] few, double[] plain) {
    if (few.length < LEAST_DRAWS) {
      return;
    }
    Sample sample = Sample.of(few);
    for (double p : new double[] {Sample.LOW, 0.5, Sample.HIGH}) {
      double at = sample.quantile(p);
      double below = Arrays.stream(plain).filter(v -> v < at).count() / (double) plain.length;
      double upTo = Arrays.stream(plain).filter(v -> v <= at).count() / (double) plain.length;
      double error = Math.sqrt(p * (1 - p) * (1.0 / few.length + 1.0 / plain.length));
      // Equal values, such as a margin at its greatest, may lie on either side.
      assertThat(below).as("%s below %s", fact, p).isLessThan(p + DEVIATIONS * error);
      assertThat(upTo).as("%s up to %s", fact, p).isGreaterThan(p - DEVIATIONS * error);
    }
  }

  /** The values of each fact in the draws in which it exists. */
  private static Map<String, double[]> facts(Setup setup, JointSample sample) {
    DrawnCut cut = DrawnCut.of(setup, sample).orElseThrow();
    Map<String, IntToDoubleFunction> numbers = new LinkedHashMap<>();
    numbers.put("hold", cut.ofHold(s -> s.margins().combined()));
    numbers.put("tip toward the fixed jaw", cut.ofHold(s -> s.margins().tipTowardFixed()));
    numbers.put("tip away from it", cut.ofHold(s -> s.margins().tipAway()));
    double revPerS = setup.cut().spindleSpeedRevPerS();
    DrawnPlate.of(setup, sample)
        .ifPresent(
            plate -> {
              numbers.put("edge spring", plate::deflectionM);
              numbers.put("first note", plate::firstHz);
              numbers.put("chatter", draw -> plate.chatterDepthM(draw, revPerS));
            });
    Map<String, double[]> values = new LinkedHashMap<>();
    numbers.forEach((fact, number) -> values.put(fact, existing(number, cut.draws())));
    return values;
  }

  private static double[] existing(IntToDoubleFunction number, int draws) {
    return IntStream.range(0, draws)
        .mapToDouble(number)
        .filter(value -> !Double.isNaN(value))
        .toArray();
  }

  private static double[] joined(double[] one, double[] other) {
    return DoubleStream.concat(Arrays.stream(one), Arrays.stream(other)).toArray();
  }
}
