package org.standproud.setup.request;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standproud.setup.Cut;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.JawSide;
import org.standproud.setup.Mode;
import org.standproud.setup.Setup;
import org.standproud.setup.Spin;
import tools.jackson.databind.node.ObjectNode;

/** What a request leaves open of a pass and what follows from the rest of it. */
class PlannedPassFieldsTest {

  /**
   * Seen from above, X right, Y up toward the fixed jaw. Read each row off the picture in {@link
   * FeedSense}: the tooth in the stock moves left on the fixed jaw side and right on the movable
   * jaw side when the spin is clockwise; climb is when it moves against the cutter's own feed, that
   * is, with the stock. [derived]
   */
  @ParameterizedTest(name = "{0} side, feed {1}, {2}: {3}")
  @CsvSource({
    "FIXED,   PLUS_X,  CLOCKWISE,        CLIMB",
    "FIXED,   MINUS_X, CLOCKWISE,        CONVENTIONAL",
    "MOVABLE, PLUS_X,  CLOCKWISE,        CONVENTIONAL",
    "MOVABLE, MINUS_X, CLOCKWISE,        CLIMB",
    "FIXED,   PLUS_X,  COUNTERCLOCKWISE, CONVENTIONAL",
    "FIXED,   MINUS_X, COUNTERCLOCKWISE, CLIMB",
    "MOVABLE, PLUS_X,  COUNTERCLOCKWISE, CLIMB",
    "MOVABLE, MINUS_X, COUNTERCLOCKWISE, CONVENTIONAL"
  })
  void climbAndConventionalFollowFromSideFeedAndSpin(
      JawSide side, FeedDirection feed, Spin spin, Mode mode) {
    assertThat(FeedSense.mode(side, feed, spin)).isEqualTo(mode);
    assertThat(byVelocity(side, feed, spin)).isEqualTo(mode);

    ObjectNode request = request(side, spin);
    Seeds.object(request, "cut").put("mode", mode.words());
    Cut derived = Seeds.accepted(request).cut();
    assertThat(derived.feed()).isEqualTo(feed);
    assertThat(Math.signum(derived.offsetM())).isEqualTo(side == JawSide.FIXED ? 1 : -1);

    Seeds.object(request, "cut").put("feed", feed.words());
    assertThat(Seeds.accepted(request).cut()).isEqualTo(derived);

    Mode other = mode == Mode.CLIMB ? Mode.CONVENTIONAL : Mode.CLIMB;
    Seeds.object(request, "cut").put("mode", other.words());
    assertThat(Seeds.problems(request))
        .singleElement()
        .satisfies(p -> assertThat(p.pointer()).isEqualTo("/cut/mode"))
        .satisfies(p -> assertThat(p.allowed()).isEqualTo(mode.words()));
  }

  /** The same by vectors: spin about Z crossed with the radius to the tooth in the stock. */
  private static Mode byVelocity(JawSide side, FeedDirection feed, Spin spin) {
    double omega = spin == Spin.CLOCKWISE ? -1 : 1;
    double toothY = side == JawSide.FIXED ? -1 : 1;
    double toothVelocityX = -omega * toothY;
    double stockVelocityX = feed == FeedDirection.PLUS_X ? -1 : 1;
    return toothVelocityX * stockVelocityX > 0 ? Mode.CLIMB : Mode.CONVENTIONAL;
  }

  private static ObjectNode request(JawSide side, Spin spin) {
    ObjectNode request = Seeds.request("02");
    ObjectNode cutter = request.putObject("cutter");
    cutter.put("name", "end mill 10 carbide for aluminium, fresh").put("spin", spin.words());
    Seeds.object(request, "cut").put("side", side.words()).remove("mode");
    return request;
  }

  @Test
  void theAxisStandsHalfACutterBeyondTheFaceThatIsLeft() {
    Setup setup = Seeds.accepted(Seeds.request("02"));
    // movable jaw side, thickness 25, a_e 0.3, diameter 10: -(12.5 - 0.3 + 5)
    assertThat(setup.cut().offsetM()).isCloseTo(-0.0172, within(1e-15));
  }

  @Test
  void aCutterOverTheStockIsBothWhicheverWayItGoes() {
    for (FeedDirection feed : FeedDirection.values()) {
      assertThat(FeedSense.mode(2e-3, 20e-3, feed, Spin.CLOCKWISE)).isEqualTo(Mode.BOTH);
    }
    ObjectNode request = Seeds.request("01");
    Seeds.object(request, "cut").put("mode", "climb");
    assertThat(Seeds.problems(request)).extracting(Problem::pointer).containsExactly("/cut/mode");
  }
}
