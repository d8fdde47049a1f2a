package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;

/** A batch holds a thread of the server for as long as its caller likes, so there is a limit. */
@IntegrationTest
class BatchRoomTest {

  private static final String BATCH = "/v1/assessments/batch";

  @Test
  void oneBatchTooManyIsRefusedWithRetryAfter(@TempDir Path audit) throws Exception {
    String line = RunningService.seed("01").toString();
    try (RunningService service =
        RunningService.start(audit, Path.of("rules"), "--standproud.api.most-batches=1")) {
      try (StreamedBatch slow = new StreamedBatch(service.caller().port())) {
        slow.send(line);
        assertThat(slow.read()).contains("\"status\":201");
        HttpResponse<String> refused = service.caller().post(BATCH, line, "application/x-ndjson");
        assertThat(refused.statusCode()).isEqualTo(503);
        assertThat(refused.headers().firstValue("Retry-After")).isPresent();
        assertThat(refused.body()).contains("/problems/too-many-batches");
        slow.end();
        assertThat(slow.read()).isNull();
      }
      assertThat(service.assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
    }
  }
}
