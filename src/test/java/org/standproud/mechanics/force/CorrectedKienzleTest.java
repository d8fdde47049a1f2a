package org.standproud.mechanics.force;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.MaterialGroup;

/** Corrections of Kienzle's law, German textbooks and the form of VDI [memory]. */
@Tag(PublishedTable.TESTS)
class CorrectedKienzleTest {

  private static final PublishedTable TEXTBOOKS =
      new PublishedTable(
          Subject.FORCE,
          "corrections of Kienzle's law, German textbooks and the form of VDI",
          SourceTag.MEMORY);

  private static void rake(MaterialGroup group, double degrees, double textbook, double catalogue) {
    Band band = CorrectedKienzle.rake(group, Math.toRadians(degrees));
    TEXTBOOKS
        .row("group " + group + ", rake " + degrees + " deg")
        .held("K_rake, 1 - (gamma - gamma_0)/66.7", "", textbook, band, 1e-4)
        .held("K_rake, 1 - gamma/100", "", catalogue, band, 1e-4);
  }

  @Test
  void aSharperRakeTakesOneToOneAndAHalfPercentADegreeOffTheForce() {
    rake(MaterialGroup.P, 6, 1, .94);
    rake(MaterialGroup.P, 16, .8501, .84);
    rake(MaterialGroup.P, -6, 1.1799, 1.06);
    rake(MaterialGroup.K, 2, 1, .98);
    rake(MaterialGroup.K, 12, .8501, .88);
  }

  @Test
  void aWornEdgeTakesThirtyToFiftyPercentMore() {
    Band worn = CorrectedKienzle.wear(EdgeCondition.WORN);
    TEXTBOOKS
        .row("worn edge")
        .figure("K_wear, least", "", 1.3, worn.low(), 1e-9)
        .figure("K_wear, greatest", "", 1.5, worn.high(), 1e-9);
    TEXTBOOKS
        .row("sharp edge")
        .held("K_wear", "", 1.0, CorrectedKienzle.wear(EdgeCondition.FRESH), 1e-9);
  }

  @Test
  void highSpeedSteelTakesAFifthMoreThanCarbide() {
    TEXTBOOKS.row("HSS").held("K_tool", "", 1.2, CorrectedKienzle.HSS, 1e-9);
  }
}
