package org.standproud.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.advice.DemoShop;
import org.standproud.assessment.ResultsInShort.CardInShort;
import org.standproud.assessment.TraceDocument.CardResult;
import org.standproud.audit.Results;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Band;

class ResultsInShortTest {

  static List<String> names() {
    return DemoShop.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void everyFactComesBackAsItWasToSevenFigures(String name) {
    Evidence evidence = EvidenceGathering.of(DemoShop.setup(name));
    ResultsInShort results = ResultsInShort.of(evidence, DemoShop.CARDS.evaluate(evidence));
    Evidence back = ResultsInShort.read(new Results.Short(results.text())).evidence();

    assertThat(back.values()).hasSameSizeAs(evidence.values());
    for (EvidenceValue value : evidence.values()) {
      Value again = back.get(value.fact());
      if (value.value() instanceof Value.Quantity number) {
        near(((Value.Quantity) again).band(), number.band());
      } else if (value.value() instanceof Value.Quantities list) {
        List<Band> bands = ((Value.Quantities) again).bands();
        assertThat(bands).hasSameSizeAs(list.bands());
        for (int i = 0; i < bands.size(); i++) {
          near(bands.get(i), list.bands().get(i));
        }
      } else if (value.value() instanceof Value.Text text) {
        assertThat(((Value.Text) again).word()).isEqualTo(text.word());
      } else if (value.value() instanceof Value.Truth truth) {
        assertThat(((Value.Truth) again).yes()).isEqualTo(truth.yes());
      } else {
        assertThat(again).isEqualTo(value.value());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("names")
  void theFormInFullGivesTheSameAsTheFormInShort(String name) {
    Evidence evidence = EvidenceGathering.of(DemoShop.setup(name));
    RuleTrace trace = DemoShop.CARDS.evaluate(evidence);
    Results.Full full =
        new Results.Full(
            PlainJson.canonical(EvidenceDocument.of(evidence)),
            PlainJson.canonical(TraceDocument.of(trace)));

    ResultsInShort brief = ResultsInShort.of(evidence, trace);
    assertThat(PlainJson.canonical(ResultsInShort.read(full).facts()).text())
        .isEqualTo(PlainJson.canonical(brief.facts()).text());
    assertThat(ResultsInShort.read(full).judgements()).isEqualTo(brief.judgements());
    Map<String, CardInShort> cards = brief.cards();
    for (CardResult line : TraceDocument.of(trace).cards()) {
      CardInShort card = cards.get(line.card());
      assertThat(card.kind()).isEqualTo(line.kind());
      assertThat(card.truth()).isEqualTo(line.truth());
      assertThat(card.severity()).isEqualTo(line.severity());
      assertThat(card.silencedBy()).isEqualTo(line.silencedBy());
      assertThat(brief.share(card.holdsIn())).isCloseTo(line.share(), near(line.share()));
      assertThat(card.conditions() == null ? 0 : card.conditions().size())
          .isEqualTo(line.conditions().size());
    }
    assertThat(TraceDocument.margins(trace).keySet()).isEqualTo(brief.margins().keySet());
  }

  private static void near(Band back, Band was) {
    assertThat(back.low()).isCloseTo(was.low(), near(was.low()));
    assertThat(back.likely()).isCloseTo(was.likely(), near(was.likely()));
    assertThat(back.high()).isCloseTo(was.high(), near(was.high()));
  }

  private static Offset<Double> near(double number) {
    return Offset.offset(5.1e-7 * Math.abs(number) + Double.MIN_VALUE);
  }
}
