package org.standproud.mechanics.evidence.stage;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.cutter.DrawnCutter;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Sample;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.holding.other.BackedBlock;
import org.standproud.mechanics.holding.other.LyingStock;
import org.standproud.mechanics.plate.RememberedPlates;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.HoldingChance;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.LettingGo;
import org.standproud.mechanics.sampling.SamplingPlan;
import org.standproud.setup.Setup;
import org.standproud.setup.request.RequestFields;

/**
 * Works a set-up through every stage of the mechanics. Where a stage refuses its input as outside
 * the range of its formulas, its facts are missing with that reason; nothing is guessed instead.
 */
public final class EvidenceGathering {

  /** Shared by all threads; an answer is the same whether its plate was kept or not. */
  private static final RememberedPlates PLATES = new RememberedPlates(256);

  /** The draws of the evidence, against a margin of one. */
  private static final SamplingPlan PLAN =
      new SamplingPlan(Sample.DRAWS, JointSample.SEED, SamplingPlan.USUAL.leastMargin());

  private final Setup setup;
  private final RememberedPlates plates;
  private final JointSample sample;
  private final @Nullable Function<DrawnCut, DrawnPlate> rigid;
  private @Nullable DrawnCut drawn;
  private final FactSheet sheet = new FactSheet();

  private EvidenceGathering(
      Setup setup, RememberedPlates plates, @Nullable Function<DrawnCut, DrawnPlate> rigid) {
    this.setup = setup;
    this.plates = plates;
    this.rigid = rigid;
    this.sample = JointSample.of(setup);
  }

  /**
   * The evidence for a set-up: one value for each fact of the {@link Vocabulary}.
   *
   * @param setup a checked set-up
   */
  public static Evidence of(Setup setup) {
    return of(setup, PLATES);
  }

  /**
   * The same with plates kept elsewhere.
   *
   * @param setup a checked set-up
   * @param plates where the plates met before are kept
   */
  public static Evidence of(Setup setup, RememberedPlates plates) {
    return new EvidenceGathering(setup, plates, null).gather();
  }

  /**
   * The evidence for stock that straps press flat on the table: how it gives and swings is theirs,
   * what a vise would do is left missing.
   *
   * @param setup a checked set-up, its stock as it lies
   * @param lying how it lies
   */
  public static Evidence lying(Setup setup, LyingStock lying) {
    return new EvidenceGathering(setup, PLATES, cut -> DrawnPlate.lying(cut, lying)).gather();
  }

  /**
   * The evidence for stock that stands out of an upright backing by no more than its thickness.
   *
   * @param setup a checked set-up whose fixed jaw is the backing
   * @param block the stock
   */
  public static Evidence backed(Setup setup, BackedBlock block) {
    return new EvidenceGathering(setup, PLATES, cut -> DrawnPlate.backed(cut, block)).gather();
  }

  /**
   * The evidence with the chance that it holds, of the same draws.
   *
   * @param setup a checked set-up
   */
  public static JointEvidence jointly(Setup setup) {
    EvidenceGathering gathering = new EvidenceGathering(setup, PLATES, null);
    Evidence evidence = gathering.gather();
    DrawnCut cut = gathering.drawn;
    return cut == null || !cut.holdIsKnown()
        ? new JointEvidence(evidence, null, null)
        : new JointEvidence(evidence, HoldingChance.of(cut, PLAN), LettingGo.of(cut));
  }

  private Evidence gather() {
    ProposedFacts.state(setup, sample, HandFeed.assumptions(setup.cut()), sheet);
    PlanFacts.state(setup, sheet);
    sheet.attempt(() -> HoldingFacts.statePlace(setup, sheet));
    sheet.attempt(() -> ReachFacts.state(setup, sample, sheet));
    sheet.attempt(() -> DriveFacts.stateFeed(setup, sample, sheet));
    sheet.attempt(() -> DriveFacts.stateTime(setup, sample, sheet));
    sheet.attempt(() -> FinishFacts.stateRoughness(setup, sample, sheet));
    List<String> questions = Plausibility.questions(setup);
    questions.forEach(sheet::ask);
    if (questions.isEmpty()) {
      sheet.attempt(this::judgeCut);
    }
    return sheet.evidence();
  }

  private void judgeCut() {
    Optional<DrawnCut> cut = DrawnCut.of(setup, sample);
    if (Engagement.of(setup.stock(), setup.cutter(), setup.cut())
            instanceof Engagement.Cutting cutting
        && cut.isPresent()) {
      drawn = cut.get();
      judge(cutting, cut.get());
    } else {
      sheet.refuse("the cutter passes beside the stock");
    }
  }

  private void judge(Engagement.Cutting cutting, DrawnCut cut) {
    EngagementFacts.state(cutting, cut, sheet);
    ForceFacts.state(cut, sheet);
    ContactFacts.state(cut, sheet);
    sheet.attempt(() -> CutterFacts.stateSpindle(cut, sheet));
    sheet.attempt(() -> DriveFacts.stateLurch(cut, sheet));
    sheet.attempt(() -> FinishFacts.stateRelease(setup, cutting.engagedWidthM(), sheet));
    double chipPerFeed = cutting.greatestChipM() / setup.cut().feedPerToothM().likely();
    sheet.attempt(() -> CutterFacts.stateCutter(cut, chipPerFeed, sheet));
    sheet.attempt(() -> HoldingFacts.state(cut, sheet));
    sheet.attempt(
        () -> {
          Function<DrawnCut, DrawnPlate> other = rigid;
          DrawnPlate plate =
              other == null ? new DrawnPlate(cut, cutting, plates) : other.apply(cut);
          PlateFacts facts = new PlateFacts(plate);
          facts.state(sheet);
          FinishFacts.stateSize(
              cut,
              plate::deflectionM,
              CutterFacts.deflectionM(cut, DrawnCutter.of(setup.cutter())),
              facts.basis().and(Basis.on(RequestFields.MACHINE, RequestFields.CUTTER)),
              sheet);
        });
  }
}
