package org.standproud.rules.gate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.standproud.rules.SmallCards;

class WeakenedStopsTest {

  private static final String BITE = "direction/bite.yaml";
  private static final String EASE = "direction/ease.yaml";
  private static final String LIGHT = "direction/light.yaml";

  private static Map<String, String> edited(String file, UnaryOperator<String> edit) {
    Map<String, String> files = SmallCards.files();
    files.computeIfPresent(file, (f, text) -> edit.apply(text));
    return files;
  }

  private static List<String> weakened(Map<String, String> after) {
    return WeakenedStops.between(
            SmallCards.ruleBase(SmallCards.files()), SmallCards.ruleBase(after))
        .stream()
        .map(w -> w.card() + ": " + w.place().message())
        .toList();
  }

  @Test
  void sameCardsWeakenNothing() {
    assertThat(weakened(SmallCards.files())).isEmpty();
  }

  @Test
  void aStopTakenAwayIsNamedWithItsFile() {
    Map<String, String> files = SmallCards.files();
    files.remove(SmallCards.TALL);
    List<CardWarning> warnings =
        WeakenedStops.between(SmallCards.ruleBase(SmallCards.files()), SmallCards.ruleBase(files));
    assertThat(warnings).hasSize(1);
    assertThat(warnings.get(0).kind()).isEqualTo(CardWarning.Kind.STOP_WEAKENED);
    assertThat(warnings.get(0).place().file()).isEqualTo(SmallCards.TALL);
    assertThat(warnings.get(0).place().message()).isEqualTo("the stop HOLD-001 is taken away");
  }

  @Test
  void aLowerSeverityIsNamed() {
    assertThat(
            weakened(edited(SmallCards.TALL, t -> t.replace("severity: stop", "severity: note"))))
        .containsExactly("HOLD-001: the stop HOLD-001 becomes a note");
  }

  @Test
  void aLimitThatFlagsLessIsNamedAndOneThatFlagsMoreIsNot() {
    assertThat(weakened(SmallCards.tall("2.6"))).hasSize(1).allMatch(w -> w.contains("2.6"));
    assertThat(weakened(SmallCards.tall("2.1"))).isEmpty();
  }

  @Test
  void oneMoreConditionIsNamedAndOneLessIsNot() {
    assertThat(
            weakened(
                edited(
                    BITE,
                    t ->
                        t.replace(
                                "  - stop = \"none\"\n", "  - stop = \"none\"\n  - packed = true\n")
                            .replace("stop: none}", "stop: none, packed: true}")
                            .replace("stop: left}", "stop: left, packed: true}")
                            .replace("stop: unknown}", "stop: unknown, packed: true}")
                            .replace(
                                "examples:\n",
                                "examples:\n  - {says: not packed, expect: pass, given: {operation: top edge, cutter diameter: 10 mm, stock thickness: 20 mm, stop: none, packed: false}}\n  - {says: packing not stated, expect: open, given: {operation: top edge, cutter diameter: 10 mm, stock thickness: 20 mm, stop: none, packed: unknown}}\n"))))
        .hasSize(1)
        .allMatch(w -> w.startsWith("DIR-001: the stop DIR-001 may flag less: now only if packed"));
  }

  @Test
  void aCardThatLowersAStopInMoreCasesIsNamed() {
    Map<String, String> before = new TreeMap<>(SmallCards.files());
    before.remove(EASE);
    List<CardWarning> eased =
        WeakenedStops.between(SmallCards.ruleBase(before), SmallCards.ruleBase(SmallCards.files()));
    assertThat(eased).hasSize(1);
    assertThat(eased.get(0).card()).isEqualTo("DIR-001");
    assertThat(eased.get(0).place().message())
        .isEqualTo("the stop DIR-001 is lowered to caution by DIR-020");
  }

  @Test
  void aLowerEasingIsNamed() {
    assertThat(weakened(edited(EASE, t -> t.replace("to: caution", "to: note"))))
        .containsExactly("DIR-001: the stop DIR-001 is lowered to note by DIR-020");
  }

  @Test
  void aCardThatLowersAStopWhereverItHoldsIsSaidToDoSoAlways() {
    Map<String, String> after = SmallCards.files();
    after.computeIfPresent(
        EASE,
        (f, t) ->
            t.substring(0, t.indexOf("examples:"))
                    .replace("when: light finishing pass", "when: stop = \"none\"")
                + "examples:\n"
                + "  - {says: no stop, expect: fail, given: {stop: none}}\n"
                + "  - {says: a stop, expect: pass, given: {stop: left}}\n"
                + "  - {says: not stated, expect: open, given: {stop: unknown}}\n");
    assertThat(weakened(after)).anyMatch(w -> w.endsWith("in more cases than before, always"));
  }

  @Test
  void aJudgementBehindACardThatLowersAStopIsFollowed() {
    assertThat(weakened(edited(LIGHT, t -> t.replace("ample: 3", "ample: 2.5"))))
        .hasSize(1)
        .allMatch(w -> w.startsWith("DIR-001: ") && w.contains("light finishing pass"));
  }
}
