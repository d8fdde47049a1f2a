package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;

/** What the rule author's guide shows of checking, trying, publishing and rolling back a card. */
@IntegrationTest
class PublishFlowGuideTest {

  private static final Path GUIDE = Path.of("api-docs/rule-author-guide.md");

  private @TempDir Path folder;
  private @TempDir Path audit;

  @Test
  void aCardGoesFromTheFirstCheckToARollBackAsTheGuideShows() throws Exception {
    GuideScript guide = new GuideScript(GUIDE, folder);
    assertThat(guide.blocks()).as("blocks that run").isEqualTo(7);
    try (RunningService service = RunningService.start(audit, Path.of("rules"))) {
      assertThat(service.assess(RunningService.seed("03")).statusCode()).isEqualTo(201);
      guide.assertRuns(service.caller().port());
      assertThat(RunningService.json(service.get("/v1/rule-base/revisions"))).hasSize(3);
    }
  }
}
