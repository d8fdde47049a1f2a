package org.standproud.mechanics.evidence.stage;

import java.util.Optional;
import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.direction.PassDirections;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.evidence.Evidence;
import org.standproud.mechanics.evidence.Vocabulary;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.PassForces;
import org.standproud.mechanics.plate.RememberedPlates;
import org.standproud.setup.Band;
import org.standproud.setup.Setup;

/**
 * Works a set-up through every stage of the mechanics. Where a stage refuses its input as outside
 * the range of its formulas, its facts are missing with that reason; nothing is guessed instead.
 */
public final class EvidenceGathering {

  /** Shared by all threads; an answer is the same whether its plate was kept or not. */
  private static final RememberedPlates PLATES = new RememberedPlates(256);

  private final Setup meant;
  private final RememberedPlates plates;
  private final Setup setup;
  private final FactSheet sheet = new FactSheet();

  private EvidenceGathering(Setup meant, RememberedPlates plates) {
    this.meant = meant;
    this.plates = plates;
    this.setup = HandFeed.asTheTeethSeeIt(meant);
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
    return new EvidenceGathering(setup, plates).gather();
  }

  private Evidence gather() {
    ProposedFacts.state(setup, HandFeed.assumptions(meant.cut()), sheet);
    PlanFacts.state(meant, sheet);
    sheet.attempt(() -> ReachFacts.state(setup, sheet));
    sheet.attempt(() -> DriveFacts.stateFeed(meant, sheet));
    sheet.attempt(() -> DriveFacts.stateTime(setup, sheet));
    sheet.attempt(() -> FinishFacts.stateRoughness(setup, sheet));
    sheet.attempt(this::judgeCut);
    return sheet.evidence();
  }

  private void judgeCut() {
    ForceInput input = ForceInput.from(setup);
    Optional<PassForces> forces = PassForces.of(input);
    if (Engagement.of(setup.stock(), setup.cutter(), setup.cut())
            instanceof Engagement.Cutting cutting
        && forces.isPresent()) {
      EngagementFacts.state(cutting, setup, sheet);
      judgeForces(cutting, input, forces.get());
    } else {
      sheet.refuse("the cutter passes beside the stock");
    }
  }

  private void judgeForces(Engagement.Cutting cutting, ForceInput input, PassForces forces) {
    PassDirections directions = PassDirections.of(input, forces);
    ForceFacts.state(directions.pass(), forces, setup, sheet);
    ContactFacts.state(directions.firstContact(), forces, sheet);
    sheet.attempt(() -> CutterFacts.stateSpindle(forces, setup, sheet));
    sheet.attempt(() -> DriveFacts.stateLurch(forces, setup, sheet));
    Band chipM = EngagementFacts.greatestChip(cutting, setup);
    sheet.attempt(() -> CutterFacts.stateCutter(forces, chipM, setup, sheet));
    sheet.attempt(() -> judgeHold(cutting, forces));
  }

  private void judgeHold(Engagement.Cutting cutting, PassForces forces) {
    StandingCut cut = StandingCut.of(setup, cutting, forces);
    HoldingFacts.state(cut, sheet);
    PlateFacts facts = new PlateFacts(cut, plates.of(cut.plate()));
    facts.stateStatics(sheet);
    sheet.attempt(() -> facts.stateSwing(sheet));
    sheet.attempt(() -> facts.stateStability(sheet));
    sheet.attempt(() -> FinishFacts.stateSize(sheet));
  }
}
