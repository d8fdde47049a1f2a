package org.standproud.api.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.IntegrationTest;
import org.standproud.audit.AuditRecord;
import org.standproud.audit.Mask;
import org.standproud.audit.replay.ChangedFinding;
import org.standproud.audit.replay.Comparison;
import org.standproud.audit.replay.Difference;
import org.standproud.audit.replay.KeptRuleBase;
import org.standproud.audit.replay.NotReplayable;
import org.standproud.audit.replay.Replay;
import org.standproud.audit.replay.Replay.Outcome;
import org.standproud.audit.replay.VersionDifference;
import org.standproud.rules.engine.RuleBase;
import org.standproud.setup.catalogue.Catalogue;

/** Recorded answers of the demo shop, given again. */
@IntegrationTest
class ReplayTest {

  private static final RecordedShop SHOP = new RecordedShop();
  private static Map<String, String> cards;
  private static RuleBase rules;

  @BeforeAll
  static void publishTheShopsCards() {
    cards = RecordedShop.cards();
    rules = SHOP.publish(cards, "the shop's cards");
  }

  static List<Path> seeds() {
    return RecordedShop.seeds();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void everySetUpOfTheShopIsAnsweredAgainByteForByte(Path file) {
    AuditRecord record = SHOP.record(RecordedShop.text(file), rules);
    Replay replay = SHOP.replayer().replay(record);

    assertThat(replay.outcome()).as(replay.explanation()).isEqualTo(Outcome.REPRODUCED);
    assertThat(replay.ruleBase()).isEqualTo(rules.revision().id());
    assertThat(replay.versions()).isEmpty();
    assertThat(replay.differences()).isEmpty();
  }

  @Test
  void anOlderProgramThatWorkedOutAnotherNumberIsNamedWithThePlace() {
    AuditRecord record =
        SHOP.record(RecordedShop.seed("03"), rules, "0.0.9", Mechanics.scaled("slip margin", 1.1));
    Replay replay = SHOP.replayer().replay(record);

    assertThat(replay.outcome()).isEqualTo(Outcome.DIFFERS);
    assertThat(replay.versions())
        .containsExactly(new VersionDifference("engine", "0.0.9", "0.1.0"));
    Difference first = replay.differences().get(0);
    assertThat(first.part()).isEqualTo("facts");
    assertThat(first.pointer()).isEqualTo("/slip margin/0");
    assertThat(replay.explanation())
        .contains("differs first in the facts", "engine was 0.0.9, is 0.1.0");
  }

  @Test
  void anOlderProgramWithTheSameNumbersGivesTheSameAnswerAndItsVersionIsSaid() {
    AuditRecord record = SHOP.record(RecordedShop.seed("01"), rules, "0.0.9", Mechanics.THIS);
    Replay replay = SHOP.replayer().replay(record);

    assertThat(replay.outcome()).isEqualTo(Outcome.REPRODUCED);
    assertThat(replay.versions())
        .containsExactly(new VersionDifference("engine", "0.0.9", "0.1.0"));
  }

  @Test
  void aProgramThatIsNotWhatItsVersionSaysIsCaught() {
    AuditRecord record =
        SHOP.record(
            RecordedShop.seed("03"),
            rules,
            RecordedShop.VERSION,
            Mechanics.scaled("slip margin", 1.1));

    assertThat(SHOP.replayer().replay(record).explanation())
        .contains("one of the programs is not what its version says");
  }

  @Test
  void aFactThatWasNotKnownThenIsADifferenceOfTheVocabulary() {
    AuditRecord record =
        SHOP.record(RecordedShop.seed("03"), rules, "0.0.9", Mechanics.without("slip margin"));
    Replay replay = SHOP.replayer().replay(record);

    assertThat(replay.outcome()).isEqualTo(Outcome.DIFFERS);
    assertThat(replay.versions())
        .anyMatch(v -> v.of().equals("vocabulary") && v.recorded().equals("no slip margin"));
  }

  @Test
  void aCatalogueThatChangedSinceDoesNotChangeTheAnswerAndWhatItWouldChangeIsShown() {
    AuditRecord record = SHOP.record(RecordedShop.seed("01"), rules);
    Catalogue then = RecordedShop.CATALOGUE;
    Map<String, org.standproud.setup.Material> materials = new TreeMap<>(then.materials());
    materials.put("1018 cold drawn", then.materials().get("6061-T6"));
    Catalogue today =
        new Catalogue(then.machines(), then.vises(), then.cutters(), materials, "today");
    Replay replay = SHOP.replayer(RecordedShop.VERSION, Mechanics.THIS, today).replay(record);

    assertThat(replay.outcome()).isEqualTo(Outcome.REPRODUCED);
    assertThat(replay.versions())
        .containsExactly(new VersionDifference("catalogue", then.revision(), "today"));
    assertThat(replay.catalogueToday())
        .isNotEmpty()
        .allMatch(d -> d.pointer().startsWith("/stock/material"));
  }

  @Test
  void aRuleBaseThatIsNotInTheArchiveIsReported() {
    RecordedShop elsewhere = new RecordedShop();
    AuditRecord record = elsewhere.record(RecordedShop.seed("01"), rules);

    Replay replay = elsewhere.replayer().replay(record);
    assertThat(replay.outcome()).isEqualTo(Outcome.NOT_POSSIBLE);
    assertThat(replay.explanation()).contains(rules.revision().id(), "not in the archive");
  }

  @Test
  void cardsChangedInTheArchiveNoLongerMakeTheRevisionThatAnswered() {
    RecordedShop shop = new RecordedShop();
    RuleBase published = shop.publish(cards, "kept and then changed");
    AuditRecord record = shop.record(RecordedShop.seed("03"), published);
    Map<String, String> changed = new TreeMap<>(cards);
    changed.computeIfPresent(
        "holding/HOLD-001.yaml", (f, text) -> text.replace("severity: caution", "severity: note"));
    shop.keep(new KeptRuleBase(published.revision(), changed));

    assertThat(shop.replayer().replay(record).explanation()).contains("the cards make revision");
  }

  @Test
  void atAnotherRevisionItIsShownWhichFindingsAppearVanishAndChange() {
    AuditRecord record = SHOP.record(RecordedShop.seed("03"), rules);
    List<String> fired = record.findings().stream().map(f -> f.cardId()).toList();
    assertThat(fired).contains("HOLD-001");
    Map<String, String> fewer = new TreeMap<>(cards);
    fewer.computeIfPresent(
        "holding/HOLD-001.yaml", (f, text) -> text.replace("severity: caution", "severity: note"));
    String gone = aloneAndFiring(record);
    fewer.keySet().removeIf(file -> file.endsWith(gone + ".yaml"));
    RuleBase later = SHOP.publish(fewer, "one card fewer, one milder");

    Comparison today = SHOP.replayer().compare(record, later);
    assertThat(today.recordedRuleBase()).isEqualTo(rules.revision().id());
    assertThat(today.ruleBase()).isEqualTo(later.revision().id());
    assertThat(today.evidence()).isEmpty();
    assertThat(today.versions()).isEmpty();
    assertThat(today.findings())
        .extracting(ChangedFinding::card, ChangedFinding::change)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple("HOLD-001", "changes"),
            org.assertj.core.groups.Tuple.tuple(gone, "vanishes"));
    assertThat(today.same()).isFalse();

    AuditRecord then = SHOP.record(RecordedShop.seed("03"), later);
    assertThat(SHOP.replayer().compare(then, rules).findings())
        .anyMatch(c -> c.card().equals(gone) && c.change().equals("appears"));
    assertThat(SHOP.replayer().compare(record, rules).same()).isTrue();
  }

  @ParameterizedTest
  @EnumSource(names = {"CALLER", "CALLER_AND_JOB"})
  void aMaskedRecordIsStillAnsweredAgain(Mask mask) {
    AuditRecord masked = mask.of(SHOP.record(RecordedShop.seed("03"), rules));

    assertThat(masked.body().text()).doesNotContain("traveler");
    assertThat(masked.body().text().contains("TLW-0103")).isEqualTo(mask == Mask.CALLER);
    assertThat(SHOP.replayer().replay(masked).outcome()).isEqualTo(Outcome.REPRODUCED);
  }

  @Test
  void aRecordWhoseAccountIsGoneSaysThatItIsWithheld() {
    AuditRecord left = Mask.ACCOUNT.of(SHOP.record(RecordedShop.seed("03"), rules));

    assertThat(SHOP.replayer().replay(left).outcome()).isEqualTo(Outcome.NOT_POSSIBLE);
    assertThatThrownBy(() -> SHOP.replayer().compare(left, rules))
        .isInstanceOf(NotReplayable.class)
        .hasMessageContaining("withheld");
  }

  /** A card that fires and that no other card of the shop speaks of. */
  private static String aloneAndFiring(AuditRecord record) {
    return record.findings().stream()
        .map(f -> f.cardId())
        .filter(id -> !id.equals("HOLD-001"))
        .filter(
            id ->
                cards.entrySet().stream()
                    .filter(c -> !c.getKey().endsWith(id + ".yaml"))
                    .noneMatch(c -> c.getValue().contains(id)))
        .filter(
            id ->
                cards.entrySet().stream()
                    .filter(c -> c.getKey().endsWith(id + ".yaml"))
                    .noneMatch(
                        c -> c.getValue().contains("derives:") || c.getValue().contains("eases:")))
        .findFirst()
        .orElseThrow();
  }
}
