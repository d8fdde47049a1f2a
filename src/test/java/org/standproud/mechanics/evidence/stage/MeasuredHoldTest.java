package org.standproud.mechanics.evidence.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standproud.advice.DemoShop;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Value;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.setup.Band;
import org.standproud.setup.HeldMeasurement;
import org.standproud.setup.Setup;
import org.standproud.setup.request.FieldPointer;
import org.standproud.setup.request.HoldFields;

/** What a shop measured on the stock stands in place of what is worked out. */
class MeasuredHoldTest {

  private static Setup measured(
      String name, @Nullable Band note, @Nullable Band damping, @Nullable Band stiffness) {
    Setup setup = DemoShop.setup(name);
    return SetupEditor.of(setup)
        .hold(setup.hold().but().measured(new HeldMeasurement(note, damping, stiffness)).held())
        .done();
  }

  private static Sample sample(Setup setup, Fact fact) {
    return sample(EvidenceGathering.of(setup), fact);
  }

  private static Sample sample(Evidence evidence, Fact fact) {
    return ((Value.Quantity) evidence.get(fact)).sample();
  }

  /** A tap shows the stock at rest; under the cut it may only be softer. */
  @ParameterizedTest
  @ValueSource(strings = {"01", "09", "12"})
  void theMeasuredNoteIsTheGreatestThatIsUsed(String name) {
    Band worked = sample(DemoShop.setup(name), Vocabulary.NATURAL_FREQUENCY).band();
    double hz = worked.likely();
    Band used =
        sample(measured(name, Band.exactly(hz), null, null), Vocabulary.NATURAL_FREQUENCY).band();
    assertThat(used.high()).isLessThanOrEqualTo(hz * 1.0001);
    assertThat(used.likely()).isGreaterThan(hz / 2);
    assertThat(used.high() / used.low()).isLessThan(worked.high() / worked.low());
  }

  @ParameterizedTest
  @ValueSource(strings = {"01", "09", "12"})
  void aLowerNoteGivesMoreAndChattersSooner(String name) {
    double hz = sample(DemoShop.setup(name), Vocabulary.NATURAL_FREQUENCY).band().likely();
    Evidence high = EvidenceGathering.of(measured(name, Band.exactly(hz), null, null));
    Evidence low = EvidenceGathering.of(measured(name, Band.exactly(hz / 2), null, null));
    assertThat(sample(low, Vocabulary.EDGE_DEFLECTION).band().likely())
        .isCloseTo(
            4 * sample(high, Vocabulary.EDGE_DEFLECTION).band().likely(), withinPercentage(.1));
    assertThat(sample(low, Vocabulary.EDGE_STIFFNESS).band().likely())
        .isCloseTo(
            sample(high, Vocabulary.EDGE_STIFFNESS).band().likely() / 4, withinPercentage(.1));
    assertThat(sample(low, Vocabulary.STABILITY_MARGIN).band().likely())
        .isLessThan(1.02 * sample(high, Vocabulary.STABILITY_MARGIN).band().likely());
  }

  @Test
  void aMeasuredStiffnessStandsForTheGive() {
    Evidence evidence =
        EvidenceGathering.of(measured("09", null, null, new Band(4.5e6, 5e6, 5.5e6)));
    Band stiffness = sample(evidence, Vocabulary.EDGE_STIFFNESS).band();
    assertThat(stiffness.high()).isLessThanOrEqualTo(5.5e6);
    assertThat(stiffness.likely()).isGreaterThan(3e6);
  }

  @Test
  void measuredDampingNarrowsTheChatterAndEndsTheAssumption() {
    Evidence assumed = EvidenceGathering.of(DemoShop.setup("12"));
    Evidence known = EvidenceGathering.of(measured("12", null, new Band(.018, .02, .022), null));
    assertThat(assumed.detail(Vocabulary.STABILITY_MARGIN).assumptions())
        .anyMatch(a -> a.input().text().equals("/hold/measuredDamping"));
    assertThat(known.detail(Vocabulary.STABILITY_MARGIN).assumptions())
        .noneMatch(a -> a.input().text().equals("/hold/measuredDamping"));
    assertThat(known.detail(Vocabulary.STABILITY_MARGIN).inputs())
        .contains(FieldPointer.to(HoldFields.MEASURED_DAMPING));
  }

  @Test
  void aNoteNoPlateOfThatSizeCanHaveIsQuestioned() {
    Evidence evidence = EvidenceGathering.of(measured("03", Band.exactly(5000), null, null));
    Value value = evidence.get(Vocabulary.STABILITY_MARGIN);
    assertThat(value).isInstanceOf(Value.Missing.class);
    assertThat(((Value.Missing) value).measure()).contains("/hold/measuredNote");
  }

  static Stream<Setup> otherStandings() {
    Setup setup = measured("08", Band.exactly(200), Band.exactly(.02), Band.exactly(1e6));
    return Stream.of(
        SetupEditor.of(setup).grip(setup.hold().gripDepthM() / 2).done(),
        SetupEditor.of(setup).packing(List.of()).done(),
        SetupEditor.of(setup).clamping(Band.exactly(5e3), null, null).done(),
        SetupEditor.of(setup).size(setup.stock().thicknessM() / 2, setup.stock().heightM()).done());
  }

  @ParameterizedTest
  @MethodSource("otherStandings")
  void aChangedHoldOrStockForgetsWhatWasMeasured(Setup changed) {
    assertThat(changed.hold().measured()).isEqualTo(HeldMeasurement.NONE);
  }
}
