package org.standproud.rules.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.rules.Shop;
import org.standproud.rules.card.Severity;
import org.standproud.rules.engine.Authorship;
import org.standproud.rules.engine.RuleBase;
import org.standproud.rules.gate.GateResult.Published;
import org.standproud.rules.gate.GateResult.Rejected;
import org.standproud.rules.language.DrawTruth;
import org.standproud.rules.language.Truth;
import org.standproud.rules.trace.CardTrace;
import org.standproud.rules.trace.Kind;
import org.standproud.rules.trace.RuleTrace;
import org.standproud.setup.Band;

class GateTest {

  static final Path CARDS = Path.of("src/test/resources/cards");
  static final Authorship BY =
      new Authorship("engineer", "first cards", Instant.parse("2026-11-25T08:00:00Z"), null);

  static Gate gate(Coverage.Demand demand) {
    return new Gate(Shop.VOCABULARY, Shop.UNIT_READER, name -> Optional.empty(), demand);
  }

  static RuleBase ruleBase() {
    GateResult result = gate(Coverage.Demand.REPORT).check(CARDS, BY);
    assertThat(result).isInstanceOf(Published.class);
    return ((Published) result).ruleBase();
  }

  static Map<String, String> files() throws Exception {
    Map<String, String> files = new TreeMap<>();
    try (var paths = Files.walk(CARDS)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(CARDS.relativize(path).toString(), Files.readString(path));
      }
    }
    return files;
  }

  private static Evidence bite(String stage, double slip) {
    return Shop.evidence(
        Shop.OPERATION,
        "top edge",
        Shop.CUTTER,
        0.010,
        Shop.THICKNESS,
        0.020,
        Shop.STOP,
        "none",
        Shop.STAGE,
        stage,
        Shop.SLIP,
        slip);
  }

  @Test
  void goodCardsPassTheGateWithTheirExamples() {
    GateResult result = gate(Coverage.Demand.REFUSE).check(CARDS, BY);
    assertThat(result).isInstanceOf(Published.class);
    assertThat(((Published) result).coverage().conditions()).isEqualTo(6);
  }

  @Test
  void aNarrowCutterWithoutAStopIsAStop() {
    CardTrace trace = ruleBase().evaluate(bite("rough", 1.5)).card("DIR-001");
    assertThat(trace.kind()).isEqualTo(Kind.FAIL);
    assertThat(trace.severity()).isEqualTo(Severity.STOP);
    assertThat(trace.changes()).isEmpty();
  }

  @Test
  void aLightFinishingPassEasesTheLengthwiseBiteAndSaysWhy() {
    RuleTrace trace = ruleBase().evaluate(bite("finish", 4));
    assertThat(trace.judgements()).containsEntry("light finishing pass", DrawTruth.TRUE);
    CardTrace eased = trace.card("DIR-001");
    assertThat(eased.kind()).isEqualTo(Kind.FAIL);
    assertThat(eased.severity()).isEqualTo(Severity.CAUTION);
    assertThat(eased.changes())
        .singleElement()
        .satisfies(
            c -> {
              assertThat(c.by()).isEqualTo("DIR-020");
              assertThat(c.because()).contains("friction");
            });
  }

  @Test
  void anEasingThatMayOrMayNotHoldDoesNotEase() {
    Evidence evidence =
        bite("finish", 4).with(Shop.evidence(Shop.SLIP, new Band(2, 4, 5)).values());
    RuleTrace trace = ruleBase().evaluate(evidence);
    assertThat(trace.judgements().get("light finishing pass").truth()).isEqualTo(Truth.EITHER);
    assertThat(trace.card("DIR-001").severity()).isEqualTo(Severity.STOP);
  }

  @Test
  void aCardThatIsNotAboutTheOperationIsNotApplicable() {
    RuleTrace trace =
        ruleBase()
            .evaluate(bite("rough", 1).with(Shop.evidence(Shop.OPERATION, "broad side").values()));
    assertThat(trace.card("DIR-001").kind()).isEqualTo(Kind.NOT_APPLICABLE);
  }

  @Test
  void aMissingFactLeavesTheCardOpenAndSaysWhatToMeasure() {
    CardTrace trace = ruleBase().evaluate(Shop.evidence(Shop.STICK_OUT, 0.08)).card("HOLD-001");
    assertThat(trace.kind()).isEqualTo(Kind.OPEN);
    assertThat(trace.conditions().get(0).unknown().toString()).contains("grip depth");
    assertThat(trace.margin()).isNull();
  }

  @Test
  void theMarginSaysHowMuchMoreGripWouldClearIt() {
    CardTrace trace =
        ruleBase()
            .evaluate(Shop.evidence(Shop.STICK_OUT, 0.080, Shop.GRIP_DEPTH, 0.020))
            .card("HOLD-001");
    assertThat(trace.margin()).isNotNull();
    assertThat(trace.margin().value()).isCloseTo(4, Offset.offset(1e-9));
    assertThat(trace.margin().clearance()).isCloseTo(-1.5, Offset.offset(1e-9));
    // 80 mm over 2.5 is 32 mm of grip: 12 mm more; 2.5 times 20 mm is 50 mm of stick-out
    assertThat(trace.margin().changes())
        .anySatisfy(
            c -> {
              assertThat(c.fact()).isEqualTo(Shop.GRIP_DEPTH);
              assertThat(c.likely()).isCloseTo(0.032, Offset.offset(1e-9));
            })
        .anySatisfy(
            c -> {
              assertThat(c.fact()).isEqualTo(Shop.STICK_OUT);
              assertThat(c.likely()).isCloseTo(0.050, Offset.offset(1e-9));
            });
  }

  @Test
  void aRefusedPublicationLeavesTheOldRuleBaseServing() throws Exception {
    ActiveRuleBase active = new ActiveRuleBase();
    Gate gate = gate(Coverage.Demand.REPORT);
    assertThat(active.accept(gate.check(files(), BY))).isTrue();
    RuleBase old = active.get().orElseThrow();
    Map<String, String> broken = files();
    broken.computeIfPresent("holding/tall.yaml", (f, y) -> y.replace("> tall", "> tal"));
    GateResult result = gate.check(broken, BY);
    assertThat(active.accept(result)).isFalse();
    assertThat(active.get()).containsSame(old);
    assertThat(((Rejected) result).errors())
        .singleElement()
        .satisfies(
            e -> {
              assertThat(e.line()).isEqualTo(12);
              assertThat(e.column()).isEqualTo(30);
              assertThat(e.fragment()).isEqualTo("tal");
              assertThat(e.nearest()).isEqualTo("tall");
            });
  }
}
