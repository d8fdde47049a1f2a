package org.standproud.advice.everyday;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.ComputationTest;
import org.standproud.GeneratedPages;
import org.standproud.advice.DemoShop;
import org.standproud.advice.Verdict;
import org.standproud.advice.everyday.Order.Pair;
import org.standproud.advice.whatif.Judged;
import org.standproud.advice.whatif.Trials;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;

/** What a practitioner prefers scores higher. Common practice, no source. */
@ComputationTest
class OrdersTest {

  private static final Path PAGE = Path.of("api-docs", "orders.md");

  private static Trials trials;
  private static Map<String, List<Order.Outcome>> outcomes;

  @BeforeAll
  static void tryAll() {
    trials = DemoShop.trials();
    outcomes = new LinkedHashMap<>();
    Orders.all().forEach(order -> outcomes.put(order.id(), order.tries().apply(trials)));
  }

  static Stream<Order> orders() {
    return Orders.all().stream();
  }

  @ParameterizedTest
  @MethodSource("orders")
  void anOrderIsTriedOnAGridAndComesOutExceptWhereMechanicsIsKnownToSayOtherwise(Order order) {
    List<Order.Outcome> pairs = outcomes.get(order.id());
    assertThat(pairs).hasSizeGreaterThanOrEqualTo(9);
    assertThat(OrdersPage.reversed(pairs))
        .as(() -> OrdersPage.table(order, pairs))
        .isEqualTo(OrdersPage.contradicted(order.id()));
  }

  @Test
  void whatMechanicsContradictsIsAnOrder() {
    assertThat(outcomes.keySet()).containsAll(OrdersPage.CONTRADICTED.keySet());
  }

  @Test
  void chippedEdgesAndOneChippedInsertAreNamedAndLoseNoVerdictToRun() {
    for (Order order : Orders.all()) {
      for (Pair pair : order.pairs()) {
        if (order.id().equals("roughing on chipped edges")) {
          assertThat(trials.of(pair.better().setup()).ids()).contains("CUT-005");
        } else if (order.id().equals("whole inserts")) {
          Judged chipped = trials.of(pair.worse().setup());
          assertThat(chipped.cautions()).contains("CUT-004");
          assertThat(chipped.verdict()).isEqualTo(Verdict.RUN_WITH_CARE);
        }
      }
    }
  }

  /**
   * A line support at depth w under the jaw top, N on it, pushed at height H with a grip of g:
   * moments about the top of the fixed jaw give N w / H toward it, moments about the line with the
   * fixed jaw bearing at its lowest give N (g - w) / (H + g) toward the movable one. Friction is
   * left out of both. So packing at the lip bears a push off the fixed jaw better than one into it.
   */
  @Test
  void highPackingBearsAPushOffTheFixedJawBetterAsMomentsByHandSay() {
    for (Order order : Orders.all()) {
      if (!order.id().equals("load into the fixed jaw")) {
        continue;
      }
      for (Pair pair : order.pairs()) {
        double grip = Double.parseDouble(pair.better().get("grip"));
        double high = Double.parseDouble(pair.better().get("height")) - grip;
        double byHand = (grip - 5) / (high + grip) * high / 5;
        double into = likely(pair.better(), Vocabulary.TIP_MARGIN_FIXED);
        double off = likely(pair.worse(), Vocabulary.TIP_MARGIN_MOVABLE);
        assertThat(off / into).as(pair.label()).isCloseTo(byHand, within(0.1 * byHand));
      }
    }
  }

  private static double likely(EverydaySetup row, Fact fact) {
    Value value = trials.of(row.setup()).evidence().get(fact);
    return ((Value.Quantity) value).band().likely();
  }

  @Test
  void thePageOfOrdersShowsTheScoresOfNow() throws IOException {
    String written = OrdersPage.written(outcomes);
    if (GeneratedPages.areWritten()) {
      Files.writeString(PAGE, written);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(written);
  }
}
