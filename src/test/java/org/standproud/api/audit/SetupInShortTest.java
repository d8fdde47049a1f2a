package org.standproud.api.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.IntegrationTest;
import org.standproud.advice.Adviser;
import org.standproud.assessment.SetupInShort;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.RecordedFinding;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.RuleKinds;
import org.standproud.setup.request.CanonicalText;

/** What is judged again from a set-up in short is what the record says. */
@IntegrationTest
class SetupInShortTest {

  private static final RecordedShop SHOP = new RecordedShop();
  private static final SetupInShort IN_SHORT = new SetupInShort();
  private static RuleBase rules;

  @BeforeAll
  static void publishTheShopsCards() {
    rules = SHOP.publish(RecordedShop.cards(), "the shop's cards");
  }

  static List<Path> seeds() {
    return RecordedShop.seeds();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everySetUpOfTheShopIsJudgedAgainAsItsRecordSays(Path file) {
    AuditRecord record = SHOP.record(RecordedShop.text(file), rules);
    byte[] numbers = IN_SHORT.of(record);
    Evidence again = SetupInShort.evidence(numbers);
    RuleKinds kinds = rules.kinds(again);
    assertThat(kinds.findings())
        .extracting(CardKind::id)
        .containsExactlyInAnyOrderElementsOf(
            record.findings().stream().map(RecordedFinding::cardId).toList());
    assertThat(Adviser.verdict(kinds.findings(), again).words())
        .isEqualTo(record.judged().verdict());
    // Draw for draw, and not only by its percentiles.
    Evidence first = EvidenceGathering.of(CanonicalText.setup(record.account().setup().text()));
    assertThat(again.values()).isEqualTo(first.values());
    assertThat(IN_SHORT.agree(numbers, record)).isTrue();
    assertThat(numbers.length).isLessThan(record.body().text().length() / 8);
  }

  @Test
  void anotherRecordHasAnotherSetupAndOneWithoutAnAccountHasNone() {
    AuditRecord one = SHOP.record(RecordedShop.seed("01"), rules);
    AuditRecord other = SHOP.record(RecordedShop.seed("03"), rules);
    assertThat(IN_SHORT.agree(IN_SHORT.of(one), other)).isFalse();
    assertThat(IN_SHORT.of((AuditRecord) Mask.ACCOUNT.of(one))).isNull();
  }
}
