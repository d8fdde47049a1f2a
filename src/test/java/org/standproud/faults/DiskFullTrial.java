package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.standproud.api.RunningService;
import org.standproud.api.ServiceProcess;
import tools.jackson.databind.JsonNode;

/**
 * The disk under the records of a service on H2 fills up, and later there is room again. The disk
 * is a small one in memory, which only root may mount.
 */
final class DiskFullTrial implements Trial {

  private static final int MOST = 3_000;
  private static final int REFUSALS = 20;
  private static final String SMALL = "size=12m";
  private static final String LARGE = "size=200m";

  @Override
  public void run(Path work, Figures figures) throws Exception {
    Path disk = Files.createDirectories(work.resolve("disk"));
    mount("-t", "tmpfs", "-o", SMALL, "tmpfs", disk.toString());
    try {
      List<HttpResponse<String>> kept = new ArrayList<>();
      try (ServiceProcess service = ServiceProcess.start(disk.resolve("audit"), "-Xmx300m")) {
        fill(service.caller(), kept, figures);
        mount("-o", "remount," + LARGE, disk.toString());
        long begin = System.nanoTime();
        await()
            .atMost(Duration.ofMinutes(1))
            .until(() -> taken(service.caller().assess(RunningService.seed("01")), kept));
        figures.put("goes-on-after-ms", (System.nanoTime() - begin) / 1_000_000);
        whole(service.caller(), kept, figures);
      }
      try (ServiceProcess again = ServiceProcess.start(disk.resolve("audit"), "-Xmx300m")) {
        whole(again.caller(), kept, figures);
      }
    } finally {
      run("umount", disk.toString());
    }
  }

  private static void fill(
      RunningService.Caller shop, List<HttpResponse<String>> kept, Figures figures) {
    int refused = 0;
    for (int i = 0; i < MOST && refused < REFUSALS; i++) {
      HttpResponse<String> answer = shop.assess(RunningService.seed("01"));
      if (!taken(answer, kept)) {
        refused++;
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(503);
        assertThat(answer.headers().firstValue("Retry-After")).isPresent();
        assertThat(answer.headers().firstValue("Content-Type").orElse(""))
            .startsWith("application/problem+json");
      }
    }
    figures.put("disk", SMALL);
    figures.put("answered-before-full", kept.size());
    figures.put("refused-with-503", refused);
    assertThat(refused).as("the disk became full").isEqualTo(REFUSALS);
    assertThat(shop.get("/actuator/health/liveness").statusCode()).isEqualTo(200);
  }

  private static boolean taken(HttpResponse<String> answer, List<HttpResponse<String>> kept) {
    return answer.statusCode() == 201 && kept.add(answer);
  }

  /** Every answer that was given is there, and none that was not. */
  private static void whole(
      RunningService.Caller shop, List<HttpResponse<String>> kept, Figures figures) {
    JsonNode chain = RunningService.json(shop.get("/v1/audit/verification"));
    assertThat(chain.get("faults")).as("chain").isEmpty();
    figures.put("answers-given", kept.size());
    figures.put("records", chain.get("intact").intValue());
    // The catalogue and the rule base have their first revisions in the chain too.
    assertThat(chain.get("intact").intValue()).isEqualTo(kept.size() + 2);
    for (HttpResponse<String> answer : kept) {
      String self = answer.headers().firstValue("Location").orElseThrow();
      assertThat(shop.get(self).body()).isEqualTo(answer.body());
    }
  }

  private static void mount(String... arguments) throws IOException, InterruptedException {
    String[] command = new String[arguments.length + 1];
    command[0] = "mount";
    System.arraycopy(arguments, 0, command, 1, arguments.length);
    if (run(command) != 0) {
      throw new IllegalStateException("only root may mount the small disk of this trial");
    }
  }

  private static int run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(command).inheritIO().start().waitFor();
  }
}
