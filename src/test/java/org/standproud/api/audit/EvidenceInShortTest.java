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
import org.standproud.assessment.EvidenceDigestCodec;
import org.standproud.assessment.EvidenceDocument;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.EvidenceValue;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.RuleKinds;

/** What is judged again from numbers in short is what the whole record says. */
@IntegrationTest
class EvidenceInShortTest {

  private static final RecordedShop SHOP = new RecordedShop();
  private static final EvidenceDigestCodec IN_SHORT = new EvidenceDigestCodec();
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
  void everySetUpOfTheShopIsJudgedAlikeFromItsNumbersAndFromItsRecord(Path file) {
    AuditRecord record = SHOP.record(RecordedShop.text(file), rules);
    byte[] numbers = IN_SHORT.of(record);
    Evidence whole = EvidenceDocument.read(record.account().evidence());
    Evidence inShort = EvidenceDigestCodec.read(numbers);

    assertThat(inShort.values())
        .extracting(EvidenceValue::fact)
        .isEqualTo(whole.values().stream().map(EvidenceValue::fact).toList());
    assertThat(inShort.values())
        .extracting(EvidenceValue::value)
        .isEqualTo(whole.values().stream().map(EvidenceValue::value).toList());
    RuleKinds kinds = rules.kinds(inShort);
    assertThat(kinds).isEqualTo(rules.kinds(whole));
    assertThat(Adviser.verdict(rules, kinds, inShort).words()).isEqualTo(record.judged().verdict());
    assertThat(IN_SHORT.agree(numbers, record)).isTrue();
    assertThat(numbers.length).isLessThan(record.body().text().length() / 8);
  }

  @Test
  void anotherRecordHasOtherNumbersAndOneWithoutAnAccountHasNone() {
    AuditRecord one = SHOP.record(RecordedShop.seed("01"), rules);
    AuditRecord other = SHOP.record(RecordedShop.seed("03"), rules);
    assertThat(IN_SHORT.agree(IN_SHORT.of(one), other)).isFalse();
    assertThat(IN_SHORT.of((AuditRecord) Mask.ACCOUNT.of(one))).isNull();
  }
}
