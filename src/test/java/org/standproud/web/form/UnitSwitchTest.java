package org.standproud.web.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standproud.setup.UnitSystem.INCH;
import static org.standproud.setup.UnitSystem.METRIC;

import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A form shown in other units says what was typed. */
class UnitSwitchTest {

  @Test
  void whateverWasTypedStandsThereAgainAfterThereAndBack() {
    Random random = new Random(5);
    Map<String, String> typed = new HashMap<>();
    for (int i = 0; i < 200; i++) {
      typed.put("/stock/length", String.valueOf(random.nextInt(30_000) / 10.0));
      typed.put(
          "/hold/clampingForce", random.nextInt(9000) + " to " + (9000 + i) + ", likely 9000");
      typed.put("/cut/axialDepth", random.nextInt(30) + "/64\"");
      typed.put("/cut/offset", "-" + random.nextInt(10));
      typed.put("/stock/thickness", i % 2 == 0 ? "1,200" : "about 12");
      Map<String, String> there = UnitSwitch.converted(typed, METRIC, INCH);
      assertThat(UnitSwitch.converted(there, INCH, METRIC)).isEqualTo(typed);
    }
  }

  /** The inch is 25.4 mm: International Yard and Pound Agreement of 1959 (from memory). */
  @Test
  void aNumberIsShownInTheOtherUnitAndMeantAsItWasTyped() {
    Map<String, String> inch = UnitSwitch.converted(Map.of("/stock/length", "140"), METRIC, INCH);
    assertThat(Double.parseDouble(inch.get("/stock/length"))).isCloseTo(140 / 25.4, within(1e-5));
    assertThat(UnitSwitch.meant(inch)).isEqualTo(Map.of("/stock/length", "140 mm"));
  }

  @Test
  void aNumberThatIsTypedOverCountsAsItStands() {
    Map<String, String> inch =
        new HashMap<>(UnitSwitch.converted(Map.of("/stock/length", "140"), METRIC, INCH));
    inch.put("/stock/length", "5.5");
    assertThat(UnitSwitch.meant(inch)).isEqualTo(Map.of("/stock/length", "5.5"));
    Map<String, String> metric = UnitSwitch.converted(inch, INCH, METRIC);
    assertThat(metric).containsEntry("/stock/length", "139.7");
    assertThat(UnitSwitch.meant(metric)).isEqualTo(Map.of("/stock/length", "5.5 in"));
  }

  @Test
  void aUnitOfItsOwnAndWhatHasTheSameUnitInBothStays() {
    Map<String, String> typed =
        Map.of("/stock/length", "2.5 in", "/cut/spindleSpeed", "820", "/cut/feed", "+x");
    assertThat(UnitSwitch.converted(typed, METRIC, INCH)).isEqualTo(typed);
  }
}
