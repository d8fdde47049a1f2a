package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.COVERS_STOCK;
import static org.standproud.mechanics.evidence.Vocabulary.ENGAGED_TEETH;
import static org.standproud.mechanics.evidence.Vocabulary.ENGAGEMENT_ANGLE;
import static org.standproud.mechanics.evidence.Vocabulary.ENTRY_CHIP;
import static org.standproud.mechanics.evidence.Vocabulary.EXIT_CHIP;
import static org.standproud.mechanics.evidence.Vocabulary.GREATEST_CHIP;
import static org.standproud.mechanics.evidence.Vocabulary.LEAST_COVER;
import static org.standproud.mechanics.evidence.Vocabulary.MEAN_CHIP;
import static org.standproud.mechanics.evidence.Vocabulary.MODE;
import static org.standproud.mechanics.evidence.Vocabulary.RADIAL_DEPTH;
import static org.standproud.mechanics.evidence.Vocabulary.WALL_LEFT;

import org.standproud.mechanics.coupling.StandingCut;
import org.standproud.mechanics.engagement.Engagement;
import org.standproud.mechanics.evidence.Fact;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.setup.Setup;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.request.StockFields;

/** What the plan view of the pass says: the arc, the chips, what the cutter reaches past. */
final class EngagementFacts {

  private static final Basis PLAN =
      Basis.on(CutFields.OFFSET, RequestFields.CUTTER, StockFields.THICKNESS, CutFields.FEED);
  private static final Basis CHIP =
      PLAN.and(Basis.on(CutFields.FEED_PER_TOOTH, CutFields.AXIAL_DEPTH));

  private EngagementFacts() {}

  static void state(Engagement.Cutting cutting, DrawnCut drawn, FactSheet sheet) {
    Setup setup = drawn.setup();
    sheet.word(MODE, cutting.mode(), PLAN);
    sheet.number(RADIAL_DEPTH, cutting.engagedWidthM(), PLAN);
    sheet.number(
        WALL_LEFT, StandingCut.wallLeftM(cutting, setup), PLAN.and(Basis.on(CutFields.OPERATION)));
    sheet.yesNo(COVERS_STOCK, cutting.coversStock(), PLAN);
    sheet.number(
        LEAST_COVER, Math.min(cutting.overhangFixedSideM(), cutting.overhangMovableSideM()), PLAN);
    sheet.number(ENGAGED_TEETH, cutting.teethInCut(), PLAN);
    sheet.number(ENGAGEMENT_ANGLE, cutting.arc().spanRad(), PLAN);
    chip(GREATEST_CHIP, cutting.greatestChipM(), drawn, sheet);
    chip(MEAN_CHIP, cutting.meanChipM(), drawn, sheet);
    chip(ENTRY_CHIP, cutting.entryChipM(), drawn, sheet);
    chip(EXIT_CHIP, cutting.exitChipM(), drawn, sheet);
  }

  private static void chip(Fact fact, double atLikelyFeedM, DrawnCut drawn, FactSheet sheet) {
    double perFeed = atLikelyFeedM / drawn.setup().cut().feedPerToothM().likely();
    sheet.number(
        fact, drawn.draws(), draw -> perFeed * drawn.sample().at(Unknown.FEED, draw), CHIP);
  }
}
