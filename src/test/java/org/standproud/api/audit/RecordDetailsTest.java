package org.standproud.api.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.IntegrationTest;
import org.standproud.assessment.AssessmentPipeline;
import org.standproud.assessment.RecordDetails;
import org.standproud.assessment.RecordDetails.Details;
import org.standproud.assessment.ResultsInShort;
import org.standproud.assessment.TraceDocument.CardResult;
import org.standproud.assessment.TraceDocument.ConditionResult;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Results;
import org.standproud.audit.canonical.CanonicalJson;
import org.standproud.audit.canonical.PlainJson;
import org.standproud.audit.replay.Replay;
import org.standproud.mechanics.evidence.stage.JointEvidence;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.trace.Kind;
import org.standproud.setup.Setup;
import org.standproud.web.recorded.RecordedAnswer;

/** Evidence and trace of records of this program, of another, and of version 0.4.0. */
@IntegrationTest
class RecordDetailsTest {

  private static final RecordedShop SHOP = new RecordedShop();
  private static RuleBase rules;

  @BeforeAll
  static void publish() {
    rules = SHOP.publish(RecordedShop.cards(), "the shop's cards");
  }

  @ParameterizedTest
  @MethodSource("org.standproud.api.audit.RecordedShop#seeds")
  void thisProgramGivesEveryWordAgain(Path file) {
    AuditRecord record = SHOP.record(RecordedShop.text(file), rules);
    Details details = details(Mechanics.THIS, Optional.of(rules)).of(record);

    assertThat(details.evidence().shortened()).isNull();
    assertThat(details.trace().shortened()).isNull();
    Results.Full full =
        new Results.Full(
            PlainJson.canonical(details.evidence()), PlainJson.canonical(details.trace()));
    ResultsInShort kept = ResultsInShort.read(record.account().results());
    assertThat(PlainJson.canonical(ResultsInShort.read(full).facts()).text())
        .isEqualTo(PlainJson.canonical(kept.facts()).text());
    assertThat(details.trace().cards()).hasSameSizeAs(rules.cards());
    assertThat(details.trace().cards())
        .filteredOn(card -> card.margin() != null)
        .hasSizeGreaterThan(50);
  }

  @Test
  void anotherProgramShowsTheNumbersOfTheRecordAndSaysWhatIsLeftOut() {
    AuditRecord record = SHOP.record(RecordedShop.seed("08"), rules);
    Details whole = details(Mechanics.THIS, Optional.of(rules)).of(record);
    Details later = details(Mechanics.scaled("slip margin", 1.1), Optional.of(rules)).of(record);

    assertThat(later.trace().shortened()).contains("left out", RecordedShop.VERSION);
    assertThat(later.evidence().shortened()).isEqualTo(later.trace().shortened());
    Map<String, CardResult> then = byId(whole);
    for (CardResult card : later.trace().cards()) {
      CardResult was = then.get(card.card());
      assertThat(card.title()).isEqualTo(was.title());
      assertThat(card.kind()).isEqualTo(was.kind());
      assertThat(card.truth()).isEqualTo(was.truth());
      assertThat(card.severity()).isEqualTo(was.severity());
      assertThat(card.conditions())
          .extracting(ConditionResult::written)
          .containsExactlyElementsOf(
              was.conditions().stream().map(ConditionResult::written).toList());
      assertThat(card.conditions())
          .extracting(ConditionResult::truth)
          .containsExactlyElementsOf(
              was.conditions().stream().map(ConditionResult::truth).toList());
      boolean finding = card.silencedBy() == null && card.kind().isFinding();
      assertThat(card.margin() == null).isEqualTo(!finding || was.margin() == null);
    }
  }

  @Test
  void withoutTheCardsOfThenOutcomesAreShownByTheirIds() {
    AuditRecord record = SHOP.record(RecordedShop.seed("08"), rules);
    Details details = details(Mechanics.THIS, Optional.empty()).of(record);

    assertThat(details.trace().shortened()).isNotNull();
    assertThat(details.trace().cards()).hasSameSizeAs(rules.cards());
    assertThat(details.trace().cards()).allMatch(card -> card.title().equals(card.card()));
    assertThat(details.trace().cards()).anyMatch(card -> card.kind() == Kind.FAIL);
  }

  /** A record as version 0.4.0 sealed it, with evidence and trace in full. */
  @Test
  void aRecordOfVersionFourIsReadShownAndReplayed() throws IOException {
    AuditRecord old = old();
    CanonicalJson body = old.body();
    assertThat(body.text()).isEqualTo(oldText());

    Results.Full full = (Results.Full) old.account().results();
    Details details = details(Mechanics.THIS, Optional.of(rules)).of(old);
    assertThat(PlainJson.canonical(details.evidence())).isEqualTo(full.evidence());
    assertThat(PlainJson.canonical(details.trace())).isEqualTo(full.trace());

    RecordedAnswer page = RecordedAnswer.of(old.account());
    assertThat(page.answer().verdict()).hasToString(old.judged().verdict());
    assertThat(page.margins()).isNotEmpty();
    assertThat(page.evidence().values()).hasSizeGreaterThan(130);

    SHOP.keep(old.versions().ruleBase(), rules);
    Replay replay = SHOP.replayer().replay(old);
    assertThat(replay.versions()).anyMatch(v -> v.of().equals("engine"));
    assertThat(replay.outcome()).isNotEqualTo(Replay.Outcome.NOT_POSSIBLE);
  }

  private static AuditRecord old() throws IOException {
    return AuditRecord.from(new CanonicalJson(oldText()));
  }

  private static String oldText() throws IOException {
    Path file = Path.of("src/test/resources/audit/records/0.4.0-set-up-08.json.gz");
    try (InputStream in = new GZIPInputStream(Files.newInputStream(file))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Map<String, CardResult> byId(Details details) {
    return details.trace().cards().stream()
        .collect(Collectors.toMap(CardResult::card, Function.identity()));
  }

  private static RecordDetails details(
      Function<Setup, JointEvidence> mechanics, Optional<RuleBase> base) {
    return new RecordDetails(
        new AssessmentPipeline(mechanics), revision -> base, RecordedShop.VERSION);
  }
}
