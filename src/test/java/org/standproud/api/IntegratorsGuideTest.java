package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;

/** Everything that the integrator's guide shows works as it stands there. */
@IntegrationTest
class IntegratorsGuideTest {

  private static final Path GUIDE = Path.of("api-docs/integrators-guide.md");

  private @TempDir Path folder;
  private @TempDir Path audit;

  @Test
  void everyBlockOfTheGuideRunsInItsOrder() throws Exception {
    GuideScript guide = new GuideScript(GUIDE, folder);
    assertThat(guide.others()).as("a block that is not a file is run").isEmpty();
    assertThat(guide.blocks()).as("blocks that run").isGreaterThanOrEqualTo(10);
    try (RunningService service =
        RunningService.start(
            audit, Path.of("rules"), "--standproud.events.inside-hosts=127.0.0.1")) {
      guide.assertRuns(service.caller().port());
    }
  }
}
