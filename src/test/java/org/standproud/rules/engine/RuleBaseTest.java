package org.standproud.rules.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.rules.Shop;
import org.standproud.rules.card.Card;
import org.standproud.rules.card.CardReader;
import org.standproud.rules.card.Levels;
import org.standproud.rules.card.Severity;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Band;

class RuleBaseTest {

  private static final Authorship BY =
      new Authorship("engineer", "note", Instant.parse("2026-11-25T08:00:00Z"), null);

  private static Card card(String id, String lines) {
    String yaml =
        """
        id: %s
        title: A claim
        severity: stop
        confidence: low
        source: {kind: common practice}
        since: 2026-11-25
        owner: shop engineer
        message: tall
        remedy: change it
        why: It is so.
        examples:
          - {says: yes, expect: fail, given: {packed: true}}
          - {says: no, expect: pass, given: {packed: false}}
        %s
        """
            .formatted(id, lines);
    CardReader.Outcome outcome = CardReader.read("holding/" + id + ".yaml", yaml);
    assertThat(outcome.errors()).isEmpty();
    return java.util.Objects.requireNonNull(outcome.card());
  }

  private static final Levels LEVELS =
      new Levels(
          Map.of(Severity.STOP, 0.05, Severity.CAUTION, 0.25, Severity.NOTE, 0.5), "for this test");

  private static RuleBase ruleBase(Card... cards) {
    CardCompiler.Outcome outcome =
        CardCompiler.compile(Arrays.asList(cards), Shop.TABLE, Shop.UNIT_READER);
    assertThat(outcome.errors()).isEmpty();
    return new RuleBase(outcome.cards(), Shop.TABLE, LEVELS, BY);
  }

  private static final Card FIRST = card("A", "when: packed\nderives: soft seat");
  private static final Card SECOND =
      card("B", "when: [soft seat, slip margin < 2]\nderives: creeping");
  private static final Card THIRD = card("C", "when: [creeping, not(stage = \"finish\")]");

  @Test
  void aJudgementOfAJudgementReachesTheCardThatReadsIt() {
    RuleBase base = ruleBase(THIRD, SECOND, FIRST);
    RuleTrace trace =
        base.evaluate(Shop.evidence(Shop.PACKED, true, Shop.SLIP, 1.0, Shop.STAGE, "rough"));
    assertThat(trace.judgements())
        .containsEntry("soft seat", DrawTruth.TRUE)
        .containsEntry("creeping", DrawTruth.TRUE);
    assertThat(trace.card("C").kind()).isEqualTo(Kind.FAIL);
    assertThat(trace.card("A").kind()).isEqualTo(Kind.INFORMATIONAL);
    assertThat(trace.findings()).extracting(CardTrace::id).containsExactly("C");
  }

  @Test
  void whatIsUnknownAtTheBottomIsOpenAtTheTop() {
    RuleTrace trace =
        ruleBase(FIRST, SECOND, THIRD).evaluate(Shop.evidence(Shop.SLIP, 1.0, Shop.STAGE, "rough"));
    assertThat(trace.card("C").kind()).isEqualTo(Kind.OPEN);
    assertThat(trace.card("C").conditions().get(0).unknown())
        .containsExactly("it is not known whether creeping");
  }

  @Test
  void aStraddledJudgementFlagsOnTheSafeSide() {
    RuleTrace trace =
        ruleBase(FIRST, SECOND, THIRD)
            .evaluate(
                Shop.evidence(
                    Shop.PACKED, true, Shop.SLIP, new Band(1, 2.5, 3), Shop.STAGE, "rough"));
    assertThat(trace.card("C").kind()).isEqualTo(Kind.FAIL);
    assertThat(trace.card("C").truth()).isEqualTo(Truth.EITHER);
  }

  @Test
  void aFindingFallsWithTheJudgementItStoodOn() {
    RuleBase base = ruleBase(FIRST, SECOND, THIRD);
    var flags = Shop.readings(Shop.PACKED, true, Shop.SLIP, 1.0, Shop.STAGE, "rough");
    var clears = Shop.readings(Shop.PACKED, false, Shop.SLIP, 1.0, Shop.STAGE, "rough");
    Evaluation flagged = base.evaluation(flags);
    Evaluation cleared = base.evaluation(clears);
    Evaluation again = base.evaluation(flags);
    base.network().run(List.of(flagged, cleared, again));
    assertThat(flagged.flagged(2)).isTrue();
    assertThat(cleared.flagged(2)).isFalse();
    assertThat(cleared.judgements())
        .containsEntry("soft seat", DrawTruth.FALSE)
        .containsEntry("creeping", DrawTruth.FALSE);
    assertThat(again.flagged(2)).isTrue();
    assertThat(again.judgements()).isEqualTo(flagged.judgements());
  }

  @Test
  void anOverrideThatMakesAFindingGraverActsAlreadyWhenItMay() {
    Card note = card("N", "when: packed\nappliesTo: {operation: top edge}");
    Card mild = card("M", "when: packed\neases: {card: N, to: note, because: mild}");
    Card grave =
        card("O", "when: slip margin < 1\noverrides: {card: N, to: caution, because: slips}");
    RuleBase base = ruleBase(note, mild, grave);
    Evidence surely = Shop.evidence(Shop.PACKED, true, Shop.OPERATION, "top edge", Shop.SLIP, 3.0);
    assertThat(base.evaluate(surely).card("N").severity()).isEqualTo(Severity.NOTE);
    Evidence slips = Shop.evidence(Shop.PACKED, true, Shop.OPERATION, "top edge", Shop.SLIP, 0.5);
    assertThat(base.evaluate(slips).card("N").severity()).isEqualTo(Severity.CAUTION);
    assertThat(base.evaluate(slips).card("N").changes()).hasSize(2);
  }

  @Test
  void aCardWhoseScopeIsUnknownIsOpenUnlessItsConditionsAreFalse() {
    RuleBase base = ruleBase(card("S", "when: packed\nappliesTo: {operation: top edge}"));
    assertThat(base.evaluate(Shop.evidence(Shop.PACKED, true)).card("S").kind())
        .isEqualTo(Kind.OPEN);
    assertThat(base.evaluate(Shop.evidence(Shop.PACKED, false)).card("S").kind())
        .isEqualTo(Kind.PASS);
  }

  @Test
  void theSameContentHasTheSameRevisionWhateverTheOrderAndTheLayout() {
    Revision one = ruleBase(FIRST, SECOND, THIRD).revision();
    Revision other = ruleBase(THIRD, FIRST, SECOND).revision();
    assertThat(one).isEqualTo(other);
    assertThat(one.id()).matches("[0-9a-f]{64}");
    Card changed = card("C", "when: [creeping, not(stage = \"rough\")]");
    assertThat(ruleBase(FIRST, SECOND, changed).revision().contentHash())
        .isNotEqualTo(one.contentHash());
    RuleBase later =
        new RuleBase(
            ruleBase(FIRST).cards(),
            Shop.TABLE,
            LEVELS,
            new Authorship("a", "b", BY.time(), one.id()));
    assertThat(later.revision().contentHash()).isEqualTo(ruleBase(FIRST).revision().contentHash());
    assertThat(later.revision().id()).isNotEqualTo(ruleBase(FIRST).revision().id());
  }

  @Property(tries = 60)
  void theEngineAgreesWithTheConditionsOnManyCardsAndAnyEvidence(
      @ForAll @LongRange(min = 0, max = 10_000) long seed) {
    RuleTrace trace = ManyCards.BASE.evaluate(ManyCards.evidence(new Random(seed)));
    // The writer of the trace refuses to go on if engine and conditions disagree.
    assertThat(trace.cards())
        .hasSize(ManyCards.BASE.cards().size())
        .isSortedAccordingTo((a, b) -> a.id().compareTo(b.id()));
  }

  @Property(tries = 60)
  void inShortEveryCardComesToTheSameAsInTheTrace(
      @ForAll @LongRange(min = 0, max = 10_000) long seed) {
    Evidence evidence = ManyCards.evidence(new Random(seed));
    RuleTrace trace = ManyCards.BASE.evaluate(evidence);
    RuleKinds kinds = ManyCards.BASE.kinds(evidence);
    assertThat(kinds.revision()).isEqualTo(trace.revision());
    assertThat(kinds.cards()).hasSameSizeAs(trace.cards());
    for (int i = 0; i < kinds.cards().size(); i++) {
      CardKind kind = kinds.cards().get(i);
      CardTrace whole = trace.cards().get(i);
      assertThat(kind)
          .isEqualTo(
              new CardKind(
                  whole.id(), whole.kind(), whole.draws(), whole.severity(), whole.isFinding()));
    }
  }

  @Test
  void aCardHangsOnTheFactsBehindItsJudgements() {
    RuleBase base = ruleBase(FIRST, SECOND, THIRD);
    assertThat(base.reads("C")).containsExactlyInAnyOrder(Shop.PACKED, Shop.SLIP, Shop.STAGE);
    assertThat(base.reads("A")).containsExactly(Shop.PACKED);
  }

  @Test
  void severalThreadsGetTheSameAnswers() throws Exception {
    List<Evidence> all =
        IntStream.range(0, 40).mapToObj(i -> ManyCards.evidence(new Random(i))).toList();
    List<RuleTrace> alone = all.stream().map(ManyCards.BASE::evaluate).toList();
    ExecutorService threads = Executors.newFixedThreadPool(4);
    try {
      List<Future<List<RuleTrace>>> futures = new ArrayList<>();
      for (int t = 0; t < 4; t++) {
        futures.add(threads.submit(() -> all.stream().map(ManyCards.BASE::evaluate).toList()));
      }
      for (Future<List<RuleTrace>> future : futures) {
        assertThat(future.get()).isEqualTo(alone);
      }
    } finally {
      threads.shutdown();
    }
  }

  /** Many cards that differ only in a number or a word, so that a mix-up in the engine shows. */
  private static final class ManyCards {
    static final int COUNT = 60;
    static final RuleBase BASE = build();

    private static RuleBase build() {
      List<Card> cards = new ArrayList<>(List.of(FIRST, SECOND, THIRD));
      for (int i = 0; i < COUNT; i++) {
        String operation = i % 2 == 0 ? "top edge" : "broad side";
        String when =
            switch (i % 4) {
              case 0 -> "slip margin < " + (i / 10.0);
              case 1 -> "[slip margin > " + (i / 10.0) + ", stage = \"rough\"]";
              case 2 -> "[creeping, slip margin > " + (i / 20.0) + "]";
              default -> "[soft seat or creeping, slip margin / 2 < " + (i / 20.0) + "]";
            };
        String id = String.format("X%03d", i);
        cards.add(card(id, "when: " + when + "\nappliesTo: {operation: " + operation + "}"));
      }
      for (int i = 0; i < COUNT; i += 5) {
        String change = i % 2 == 0 ? "eases: {to: note, " : "overrides: {to: caution, ";
        String when = i % 3 == 0 ? "creeping" : "stage = \"rough\"";
        String of = String.format("card: X%03d, because: so}", i);
        cards.add(card(String.format("Y%03d", i), "when: " + when + "\n" + change + of));
      }
      return ruleBase(cards.toArray(new Card[0]));
    }

    static Evidence evidence(Random random) {
      List<Object> values = new ArrayList<>();
      Map<Fact, List<Object>> choices =
          Map.of(
              Shop.OPERATION, List.of("top edge", "broad side"),
              Shop.STAGE, List.of("rough", "finish"),
              Shop.PACKED, List.of(true, false));
      for (Fact fact : List.of(Shop.OPERATION, Shop.STAGE, Shop.PACKED)) {
        if (random.nextInt(5) > 0) {
          values.add(fact);
          values.add(choices.get(fact).get(random.nextInt(2)));
        }
      }
      if (random.nextInt(6) > 0) {
        double low = random.nextDouble() * 4;
        values.add(Shop.SLIP);
        values.add(new Band(low, low + 0.2, low + random.nextDouble() + 0.2));
      }
      return Shop.evidence(values.toArray());
    }
  }
}
