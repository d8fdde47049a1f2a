package org.standproud.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.standproud.advice.DemoShop;
import org.standproud.audit.Versions;
import org.standproud.audit.replay.AssessmentContext;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.setup.Setup;
import org.standproud.setup.catalogue.Catalogue;
import org.standproud.setup.request.Reading;
import org.standproud.setup.request.SetupReader;

/** A set-up in the words of a shop is answered, and the answer says what was taken for them. */
class WordsInAnswerTest {

  private static final String REQUEST =
      """
      {"units":"inch","job":{"jobOrder":"1"},
       "stock":{"length":5,"thickness":0.75,"height":2.5,"material":"aluminum plate",
                "surface":"bright drawn"},
       "hold":{"vise":"6 inch vise","gripDepth":1.4,"clamping":"firm","seat":"parallels",
               "stop":"+x"},
       "machine":"knee mill","cutter":"2 inch face mill, carbide",
       "cut":{"operation":"top edge","stage":"rough","axialDepth":0.02,"offset":0,"feed":"-x",
              "spindleSpeed":1340,"feedPerTooth":0.004,"feedDrive":"power"}}
      """;

  @Test
  void theAnswerSaysWhatWasTakenForEachOfTheWords() {
    Reading reading = new SetupReader(Catalogue.EMPTY).readJson(REQUEST);
    assertThat(reading).isInstanceOf(Reading.Accepted.class);
    Setup setup = ((Reading.Accepted) reading).setup();
    AssessmentContext occasion =
        new AssessmentContext(
            new UUID(0, 1),
            Instant.parse("2026-11-30T08:00:00Z"),
            new Versions("rules", "catalogue", "test"),
            List.of());
    String answer =
        new AssessmentPipeline(EvidenceGathering::jointly)
            .make(setup, DemoShop.CARDS, occasion)
            .answer()
            .text();
    assertThat(answer)
        .contains("/stock/material: aluminum plate (typical)")
        .contains("/hold/vise: 6 inch vise (typical)")
        .contains("/machine: knee mill (typical)")
        .contains("/cutter: 2 inch face mill, carbide (typical)")
        .contains("/hold/clamping: firm");
  }
}
