package org.standproud;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standproud.advice.DemoShop;
import org.standproud.mechanics.plate.PlateInput;
import org.standproud.mechanics.plate.PlatePoint;
import org.standproud.mechanics.plate.RememberedPlates;
import org.standproud.mechanics.tooltip.RememberedTools;
import org.standproud.setup.Band;
import org.standproud.setup.Cutter;

/** Callers that ask a cache for the same thing at once get the one value that was computed. */
class SharedCachesTest {

  @Test
  void oneToolIsReducedForAllWhoAskAtOnce() throws Exception {
    Cutter cutter = DemoShop.setup("01").cutter();
    RememberedTools tools = new RememberedTools(4);
    assertThat(AtOnce.answers(() -> tools.of(cutter))).hasSize(1);
  }

  @Test
  void onePlateIsSolvedForAllWhoAskAtOnce() throws Exception {
    Band turn = Band.exactly(1e5);
    PlateInput plate =
        new PlateInput(
            0.05,
            0.1,
            0.004,
            new Band(195e9, 205e9, 210e9),
            0.29,
            7850,
            turn.times(1e4),
            turn,
            0.1,
            new PlatePoint(0, 0.05));
    RememberedPlates plates = new RememberedPlates(4);
    assertThat(AtOnce.answers(() -> plates.of(plate))).hasSize(1);
    assertThat(AtOnce.answers(() -> plates.surface(plate))).hasSize(1);
    assertThat(plates.size()).isEqualTo(1);
  }
}
