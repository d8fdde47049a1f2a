package org.standproud.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standproud.IntegrationTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A batch in a service with little memory. {@code -Dtest.batch.lines=100000} sends the most that
 * one may have; {@code -Dtest.batch.judged=20} makes only one line in so many a set-up and leaves
 * the others to be refused, where time or disk is short.
 */
@IntegrationTest
class BatchMemoryTest {

  private static final int LINES = Integer.getInteger("test.batch.lines", 400);
  private static final int JUDGED = Integer.getInteger("test.batch.judged", 1);
  private static final String LITTLE = "-Xmx256m";

  @Test
  void aBatchIsJudgedInAMemoryThatItsAnswersWouldNotFitInto(@TempDir Path audit) throws Exception {
    try (ServiceProcess service = ServiceProcess.start(audit, LITTLE);
        StreamedBatch batch = new StreamedBatch(service.caller().port())) {
      batch.sendAll(IntStream.range(0, LINES).mapToObj(BatchMemoryTest::line).iterator());
      for (int line = 1; line <= LINES; line++) {
        JsonNode answer = JsonMapper.shared().readTree(batch.read());
        assertThat(answer.get("line").intValue()).isEqualTo(line);
        assertThat(answer.get("status").intValue())
            .as(answer.toString())
            .isEqualTo(judged(line - 1) ? 201 : 422);
      }
      assertThat(batch.read()).isNull();
    }
  }

  private static boolean judged(int number) {
    return number % JUDGED == 0;
  }

  private static String line(int number) {
    if (!judged(number)) {
      return "{\"units\":\"metric\",\"note\":\"" + number + "\"}";
    }
    ObjectNode setup = RunningService.seed(number % 2 == 0 ? "01" : "03");
    ((ObjectNode) setup.get("job")).put("jobOrder", "night-" + number);
    return setup.toString();
  }
}
