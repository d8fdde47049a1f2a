package org.standproud.advice.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standproud.advice.DemoShop;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.setup.Setup;
import org.standproud.setup.Stop;

/** Two set-ups side by side. */
class ComparedSetupsTest {

  static List<String> names() {
    return DemoShop.names();
  }

  @ParameterizedTest
  @MethodSource("names")
  void aSetUpDiffersInNothingFromItself(String name) {
    Setup setup = DemoShop.setup(name);
    ComparedSetups same = ComparedSetups.of(setup, setup, DemoShop.CARDS);
    assertThat(same.changes()).isEmpty();
    assertThat(same.moves()).allMatch(move -> move.move() == Move.STAYS);
    assertThat(same.scoreAfter()).isEqualTo(same.scoreBefore());
  }

  @Test
  void changesAreListedFieldByFieldInTheCallersUnits() {
    Setup setup = DemoShop.setup("03");
    Setup changed = SetupEditor.of(setup).grip(0.03).stop(Stop.BOTH).depth(0.001).done();
    assertThat(SetupFields.changes(setup, changed))
        .extracting(FieldChange::words)
        .containsExactly(
            "grip depth 8 mm to 30 mm", "stop none to both ends", "axial depth 3 mm to 1 mm");
  }

  @Test
  void whatIsNewOneWayIsGoneTheOtherWay() {
    Setup before = DemoShop.setup("03");
    Setup after = SetupEditor.of(before).grip(0.04).depth(0.0005).done();
    ComparedSetups there = ComparedSetups.of(before, after, DemoShop.CARDS);
    ComparedSetups back = ComparedSetups.of(after, before, DemoShop.CARDS);
    assertThat(cards(there, Move.GONE)).isEqualTo(cards(back, Move.NEW)).isNotEmpty();
    assertThat(cards(there, Move.NEW)).isEqualTo(cards(back, Move.GONE));
    assertThat(there.scoreAfter()).isEqualTo(back.scoreBefore());
    assertThat(there.scoreAfter()).isGreaterThan(there.scoreBefore());
  }

  private static List<String> cards(ComparedSetups comparison, Move move) {
    return comparison.moves().stream()
        .filter(m -> m.move() == move)
        .map(FindingMove::card)
        .sorted()
        .toList();
  }

  @Test
  void aDeeperGripIsFartherFromTipping() {
    Setup before = DemoShop.setup("03");
    ComparedSetups deeper =
        ComparedSetups.of(before, SetupEditor.of(before).grip(0.02).done(), DemoShop.CARDS);
    FindingMove tip =
        deeper.moves().stream().filter(m -> m.card().equals("HOLD-011")).findFirst().orElseThrow();
    assertThat(tip.distanceBefore()).isNotNull();
    assertThat(tip.distanceAfter()).isNotNull();
    assertThat((Double) tip.distanceAfter().value().value())
        .isGreaterThan((Double) tip.distanceBefore().value().value());
  }
}
