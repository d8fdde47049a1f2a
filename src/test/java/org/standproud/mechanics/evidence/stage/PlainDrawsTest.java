package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.advice.DemoShop;
import org.standproud.mechanics.OutsideValidity;
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

  private static final int SETUPS = 600;
  private static final long SETUPS_SEED = 31;

  /** Shops that have the same set-up on paper. */
  private static final int SHOPS_EACH = 16;

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

  /**
   * A shop's own hold and cut are one plain draw of the distributions: it falls outside either
   * percentile in one set-up of twenty. Numbers of which many draws have the same, such as a margin
   * at its greatest, fall on a percentile instead.
   */
  @Test
  void whatAShopReallyHasFallsInsideThePercentilesAsOftenAsTheySay() {
    Map<String, int[]> counts = new TreeMap<>();
    RandomShop shop = new RandomShop(SETUPS_SEED);
    for (int i = 0; i < SETUPS; i++) {
      Setup setup = shop.next();
      try {
        Map<String, double[]> stated = facts(setup, JointSample.of(setup));
        facts(setup, JointSample.random(setup, SHOPS_EACH, i))
            .forEach(
                (fact, real) ->
                    count(
                        stated.getOrDefault(fact, new double[0]),
                        real,
                        counts.computeIfAbsent(fact, f -> new int[3])));
      } catch (OutsideValidity e) {
        continue; // Nothing is stated of a set-up that the formulas do not cover.
      }
    }
    counts.forEach(
        (fact, count) -> {
          double all = count[2];
          // Shops of one set-up share the error of its 256 draws.
          double error = Math.sqrt(0.05 * 0.95 * (1 / all + SHOPS_EACH / all / 4));
          double part = 0.05 + DEVIATIONS * error;
          assertThat(all).as(fact).isGreaterThan(1_000);
          assertThat(count[0] / all).as("%s below its 5th percentile", fact).isLessThan(part);
          assertThat(count[1] / all).as("%s above its 95th percentile", fact).isLessThan(part);
          if (fact.equals("first note") || fact.equals("edge spring")) {
            part = 0.05 - DEVIATIONS * error;
            assertThat(count[0] / all).as("%s below its 5th percentile", fact).isGreaterThan(part);
            assertThat(count[1] / all).as("%s above its 95th percentile", fact).isGreaterThan(part);
          }
        });
  }

  private static void count(double[] stated, double[] real, int[] count) {
    if (stated.length < Sample.DRAWS) {
      return;
    }
    Sample sample = Sample.of(stated);
    for (double value : real) {
      count[0] += value < sample.quantile(Sample.LOW) ? 1 : 0;
      count[1] += value > sample.quantile(Sample.HIGH) ? 1 : 0;
      count[2]++;
    }
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
    Map<String, IntToDoubleFunction> numbers = new LinkedHashMap<>();
    DrawnCut cut = DrawnCut.of(setup, sample).orElse(null);
    if (cut == null) {
      return Map.of();
    }
    cut.checkHold();
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
