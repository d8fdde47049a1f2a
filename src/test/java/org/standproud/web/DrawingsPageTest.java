package org.standproud.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.standproud.GeneratedPages;
import org.standproud.IntegrationTest;
import org.standproud.advice.DemoShop;
import org.standproud.advice.envelope.SafeEnvelope;
import org.standproud.drawing.EdgeChart;
import org.standproud.drawing.EnvelopeChart;
import org.standproud.drawing.ForceChart;
import org.standproud.drawing.LobeChart;
import org.standproud.mechanics.curves.EdgeCurve;
import org.standproud.mechanics.curves.StabilityCurve;
import org.standproud.mechanics.evidence.stage.EvidenceGathering;
import org.standproud.mechanics.history.ForceHistory;
import org.standproud.setup.Setup;
import org.standproud.setup.UnitSystem;
import org.standproud.web.drawing.EndView;
import org.standproud.web.drawing.Loads;
import org.standproud.web.drawing.PlanView;
import org.standproud.web.drawing.PushView;

/**
 * Holds the drawings of the guide to what the service draws; {@code -Dpages.write=true} writes them
 * anew.
 */
@IntegrationTest
class DrawingsPageTest {

  private static final Path PAGE = Path.of("api-docs/drawings.md");
  private static final Path FOLDER = Path.of("api-docs/drawings");
  private static final String SEED = "03-tall-plate-barely-gripped";
  private static final int SPEEDS = 200;
  private static final int PLACES = 41;

  private static Map<String, String> drawings() {
    Setup setup = SeedSetups.setup(SEED);
    UnitSystem units = setup.units();
    Loads loads = Loads.of(EvidenceGathering.of(setup));
    ForceHistory force = ForceHistory.of(setup).orElseThrow();
    Map<String, String> drawings = new TreeMap<>();
    drawings.put("plan", PlanView.of(setup, "plan"));
    drawings.put("end", EndView.of(setup, loads, "end"));
    drawings.put("push", PushView.of(loads, units, "push"));
    drawings.put("turn", ForceChart.turn(force, units, "turn"));
    drawings.put("across", ForceChart.across(force, units, "across"));
    drawings.put("along", ForceChart.along(force, units, "along"));
    drawings.put(
        "lobes", LobeChart.of(StabilityCurve.of(setup, SPEEDS).orElseThrow(), units, "lobes"));
    drawings.put("edge", EdgeChart.of(EdgeCurve.of(setup, PLACES).orElseThrow(), units, "edge"));
    Setup fine = SeedSetups.setup("01-top-edge-wire-and-stop");
    drawings.put(
        "envelope", EnvelopeChart.of(SafeEnvelope.of(fine, DemoShop.CARDS).cut(), "envelope"));
    return drawings;
  }

  @Test
  void theGuideShowsTheDrawingsOfTheService() throws IOException {
    Map<String, String> drawings = drawings();
    if (GeneratedPages.areWritten()) {
      Files.createDirectories(FOLDER);
      for (Map.Entry<String, String> drawing : drawings.entrySet()) {
        Files.writeString(FOLDER.resolve(drawing.getKey() + ".svg"), drawing.getValue() + "\n");
      }
    }
    String page = Files.readString(PAGE);
    for (Map.Entry<String, String> drawing : drawings.entrySet()) {
      assertThat(Files.readString(FOLDER.resolve(drawing.getKey() + ".svg")))
          .isEqualTo(drawing.getValue() + "\n");
      assertThat(page).contains("](drawings/" + drawing.getKey() + ".svg)");
    }
  }
}
