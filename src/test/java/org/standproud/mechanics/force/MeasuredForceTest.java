package org.standproud.mechanics.force;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standproud.mechanics.published.MeasuredTable.number;

import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standproud.mechanics.engagement.PassFixture;
import org.standproud.mechanics.published.MeasuredTable;
import org.standproud.mechanics.published.PublishedTable;
import org.standproud.mechanics.published.ResultKind;
import org.standproud.mechanics.published.SourceTag;
import org.standproud.mechanics.published.Subject;
import org.standproud.setup.Band;

/**
 * Forces against a dynamometer. The coefficients were fitted to the means of these records, so the
 * means are only kept from drifting; the sizes in the plane were not fitted and check the shape of
 * the force over the turn.
 */
class MeasuredForceTest {

  private static final PublishedTable SLOTS =
      new PublishedTable(
          Subject.FORCE,
          "measured: slots by dynamometer, end mill 25 mm, records in leekunhwee/ForceCalculation",
          SourceTag.FOUND,
          ResultKind.MEASURED);

  private static final CuttingCoefficients SET =
      CuttingCoefficients.printed(958.86, 15.758, 250.86, 19.434, 146.36, 18.208);

  @Test
  @Tag(PublishedTable.TESTS)
  void slotsPushAsTheDynamometerSays() {
    for (Map<String, String> row : MeasuredTable.rows("slot-forces.csv")) {
      double feed = number(row, "feedMm");
      PassFixture pass = PassFixture.pass(25, 2, 40, 0, feed).shaped(90, 3, 45, 0);
      PassForces forces =
          PassForces.of(
                  ForceInput.of(pass.stock(), pass.cutter(), pass.cut())
                      .with(new ForceModel.LinearEdge(SET, Band.exactly(1))))
              .orElseThrow();
      double[] sizes =
          forces.likelyRevolution(720).stream()
              .mapToDouble(s -> Math.hypot(s.force().xN(), s.force().yN()))
              .sorted()
              .toArray();
      double mean = Arrays.stream(sizes).average().orElseThrow();
      SLOTS
          .row("slot, 2 teeth, a_p 3 mm, f_z " + feed + " mm")
          .percent(
              "mean along the feed",
              "N",
              number(row, "alongN"),
              -forces.steady().x().meanN().likely(),
              20)
          .percent(
              "mean across the feed",
              "N",
              number(row, "acrossN"),
              -forces.steady().y().meanN().likely(),
              10)
          .percent(
              "mean along the axis",
              "N",
              number(row, "axialN"),
              forces.steady().z().meanN().likely(),
              12);
      // A turn's greatest force holds run-out and the dynamometer's own note besides.
      assertThat(number(row, "sizeMeanN")).isBetween(mean, 1.4 * mean);
    }
  }
}
