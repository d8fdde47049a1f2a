package org.standproud.api.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standproud.assessment.acceptance.RecordedFindingComparison;
import org.standproud.assessment.acceptance.ShownAcceptance;
import org.standproud.audit.Acceptance;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.ChainRecord;
import org.standproud.audit.Person;
import org.standproud.audit.RecordedFinding;
import org.standproud.audit.Withdrawal;
import org.standproud.audit.replay.Replay.Outcome;
import org.standproud.rules.engine.RuleBase;
import tools.jackson.databind.JsonNode;

/** A finding is signed off. */
class AcceptedFindingTest {

  private static final RecordedShop SHOP = new RecordedShop();
  private static final Instant NOON = RecordedShop.NOON;
  private static final Person FOREMAN = new Person("M. Weaver", "foreman");
  private static RuleBase rules;
  private static AuditRecord first;
  private static RecordedFinding stop;

  @BeforeAll
  static void aPlateBarelyGrippedIsStopped() {
    rules = SHOP.publish(RecordedShop.cards(), "the shop's cards");
    first = SHOP.record(RecordedShop.seed("03"), rules);
    stop =
        first.findings().stream()
            .filter(f -> f.severity().equals("stop"))
            .findFirst()
            .orElseThrow();
  }

  @Test
  void anAcceptedStopIsShownAsAcceptedAndTheVerdictAndTheFindingStay() {
    AuditRecord again = again(RecordedShop.seed("03"), accepted(true), NOON.plusSeconds(60));
    JsonNode finding = finding(again);

    assertThat(again.judged()).isEqualTo(first.judged());
    assertThat(again.judged().verdict()).isEqualTo("do not run");
    assertThat(again.findings()).isEqualTo(first.findings());
    assertThat(finding.path("kind")).isEqualTo(finding(first).path("kind"));
    assertThat(finding.path("severity").stringValue()).isEqualTo("stop");
    JsonNode shown = finding.path("acceptances").get(0);
    assertThat(shown.path("state").stringValue()).isEqualTo("in force");
    assertThat(shown.path("because").size()).isZero();
    assertThat(shown.path("by").path("name").stringValue()).isEqualTo("M. Weaver");
    assertThat(shown.path("reason").stringValue()).isEqualTo("A second clamp holds the top.");
    assertThat(finding(first).has("acceptances")).isFalse();
  }

  @Test
  void anAnswerWithAnAcceptanceIsGivenAgainByteForByte() {
    AuditRecord again = again(RecordedShop.seed("03"), accepted(true), NOON.plusSeconds(60));

    assertThat(SHOP.replayer().replay(again).outcome()).isEqualTo(Outcome.REPRODUCED);
  }

  @Test
  void anAcceptanceIsStaleOnceItHasExpired() {
    AuditRecord late =
        again(RecordedShop.seed("03"), accepted(true), NOON.plus(Duration.ofDays(7)));
    JsonNode shown = finding(late).path("acceptances").get(0);

    assertThat(shown.path("state").stringValue()).isEqualTo("stale");
    assertThat(shown.path("because").get(0).stringValue()).startsWith("expired");
    assertThat(late.judged()).isEqualTo(first.judged());
  }

  @Test
  void anAcceptanceIsStaleWhenTheNumbersAreNoLongerThoseThatWereAccepted() {
    String deeper =
        RecordedShop.seed("03").replaceFirst("\"axialDepth\": 3", "\"axialDepth\": 3.1");
    assertThat(deeper).isNotEqualTo(RecordedShop.seed("03"));
    JsonNode shown = finding(again(deeper, accepted(true), NOON)).path("acceptances").get(0);

    assertThat(shown.path("state").stringValue()).isEqualTo("stale");
    assertThat(shown.path("because").toString()).contains(" was ", ", is ");
  }

  @Test
  void anAcceptanceIsStaleWhenTheCardBecameGraver() {
    Acceptance milder = accepted(true, first, first.findings().get(0));
    var line =
        (tools.jackson.databind.node.ObjectNode)
            SHOP.outcomes(rules).outcomes(first).apply(milder.card()).tree();
    line.put("severity", "caution");

    assertThat(
            RecordedFindingComparison.changes(
                org.standproud.audit.canonical.CanonicalJson.of(line), milder.said()))
        .containsExactly("severity was caution, is " + milder.severity());
  }

  @Test
  void anAcceptanceThatWasTakenBackIsShownAsTakenBack() {
    Acceptance given = accepted(true);
    Withdrawal back =
        new Withdrawal(AuditRecord.newId(), NOON, given.id(), FOREMAN, "The clamp is broken.");
    ShownAcceptance shown = ShownAcceptance.of(given, back, given.said(), NOON);

    assertThat(shown.state()).isEqualTo(ShownAcceptance.WITHDRAWN);
    assertThat(shown.because()).containsExactly("M. Weaver, foreman: The clamp is broken.");
    assertThat(ChainRecord.from(back.body())).isEqualTo(back);
    assertThat(ChainRecord.from(given.body())).isEqualTo(given);
  }

  @Test
  void anAcceptanceNeedsAnEndAReasonAndAJobThatIsNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> acceptance("J-1", "Fine.", NOON.plus(Duration.ofDays(400)), true))
        .withMessageContaining("expires");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> acceptance("J-1", "Fine.", NOON, true))
        .withMessageContaining("expires");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> acceptance("J-1", " ", NOON.plusSeconds(60), true))
        .withMessageContaining("reason");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> acceptance(null, "Fine.", NOON.plusSeconds(60), true))
        .withMessageContaining("job order");
    assertThatIllegalArgumentException().isThrownBy(() -> new Person("M. Weaver", ""));
  }

  private static AuditRecord again(String request, Acceptance given, Instant time) {
    SHOP.keep(given);
    return SHOP.record(request, rules, RecordedShop.VERSION, Mechanics.THIS, List.of(given), time);
  }

  private static Acceptance accepted(boolean forJobOrder) {
    return accepted(forJobOrder, first, stop);
  }

  private static Acceptance accepted(
      boolean forJobOrder, AuditRecord record, RecordedFinding finding) {
    return new Acceptance(
        AuditRecord.newId(),
        NOON,
        record.id(),
        record.asked().jobOrder(),
        finding.cardId(),
        finding.severity(),
        SHOP.outcomes(rules).outcomes(record).apply(finding.cardId()),
        FOREMAN,
        "A second clamp holds the top.",
        NOON.plus(Duration.ofDays(7)),
        forJobOrder);
  }

  private static Acceptance acceptance(
      String jobOrder, String reason, Instant expires, boolean forJobOrder) {
    return new Acceptance(
        AuditRecord.newId(),
        NOON,
        first.id(),
        jobOrder,
        stop.cardId(),
        stop.severity(),
        SHOP.outcomes(rules).outcomes(first).apply(stop.cardId()),
        FOREMAN,
        reason,
        expires,
        forJobOrder);
  }

  private static JsonNode finding(AuditRecord record) {
    for (JsonNode finding : record.account().answer().tree().path("findings")) {
      if (finding.path("card").stringValue().equals(stop.cardId())) {
        return finding;
      }
    }
    throw new AssertionError("no finding of " + stop.cardId());
  }
}
