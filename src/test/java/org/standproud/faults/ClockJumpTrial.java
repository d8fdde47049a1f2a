package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.standproud.api.RunningService;
import org.standproud.api.ServiceProcess;
import tools.jackson.databind.JsonNode;

/**
 * The clock of a service jumps two days back and four hundred forward and back again, with a rule
 * that keeps records for a year. Wants Debian's libfaketime.
 */
final class ClockJumpTrial implements Trial {

  private static final Path LIBRARY =
      Path.of("/usr/lib/x86_64-linux-gnu/faketime/libfaketimeMT.so.1");
  private static final long RETENTION_HAS_RUN_MS = 75_000;
  private static final long CLOCK_IS_READ_MS = 2_000;

  private Path clock;

  @Override
  public void run(Path work, Figures figures) throws Exception {
    if (Files.notExists(LIBRARY)) {
      throw new IllegalStateException("libfaketime is wanted: apt-get install libfaketime");
    }
    clock = work.resolve("clock");
    set("+0d");
    Map<String, String> faked =
        Map.of(
            "LD_PRELOAD",
            LIBRARY.toString(),
            "FAKETIME_TIMESTAMP_FILE",
            clock.toString(),
            "FAKETIME_CACHE_DURATION",
            "1",
            "FAKETIME_DONT_FAKE_MONOTONIC",
            "1",
            // Or every wait of a thread ends at once, and the machine does nothing else.
            "FAKETIME_FORCE_MONOTONIC_FIX",
            "0");
    try (ServiceProcess service =
        ServiceProcess.start(
            faked, work.resolve("audit"), "-Xmx300m", "--standproud.retention.records=P1Y")) {
      jump(service.caller(), figures);
    }
  }

  private void jump(RunningService.Caller shop, Figures figures) throws Exception {
    List<HttpResponse<String>> sent = new ArrayList<>();
    sent.add(sent(shop, "a"));
    set("-2d");
    sent.add(sent(shop, "b"));
    assertThat(sent(shop, "a").body()).as("the key stands").isEqualTo(sent.get(0).body());
    set("+400d");
    sent.add(sent(shop, "c"));
    Thread.sleep(RETENTION_HAS_RUN_MS);
    set("+0d");
    sent.add(sent(shop, "d"));
    HttpResponse<String> again = sent(shop, "b");
    boolean stands = again.body().equals(sent.get(1).body());
    figures.put("key-after-jump", stands ? "stands" : "judged again");
    if (!stands) {
      sent.add(again); // Keys expire by the clock, and had expired: a limit that the page names.
    }

    List<String> newestFirst = new ArrayList<>();
    RunningService.json(shop.get("/v1/assessments"))
        .get("assessments")
        .forEach(one -> newestFirst.add(one.get("id").stringValue()));
    List<String> wanted = new ArrayList<>(sent.stream().map(Stream::id).toList());
    java.util.Collections.reverse(wanted);
    assertThat(newestFirst).as("in the order they were made").isEqualTo(wanted);
    figures.put("jumps", "-2 d, +400 d, back");
    figures.put("records-in-order", newestFirst.size());
    JsonNode chain = RunningService.json(shop.get("/v1/audit/verification"));
    assertThat(chain.get("faults")).isEmpty();
    figures.put("chain-faults", 0);
    int gone = 0;
    for (HttpResponse<String> one : sent) {
      gone += shop.get("/v1/assessments/" + Stream.id(one)).statusCode() == 200 ? 0 : 1;
    }
    figures.put("records-that-lost-text", gone);
    assertThat(gone).as("retention does not believe such a clock").isZero();
  }

  private static HttpResponse<String> sent(RunningService.Caller shop, String key) {
    HttpResponse<String> answer =
        shop.send(
            shop.to("/v1/assessments")
                .header("Content-Type", "application/json")
                .header("Idempotency-Key", key)
                .POST(BodyPublishers.ofString(Stream.setup(key))));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
    return answer;
  }

  private void set(String offset) throws Exception {
    Files.writeString(clock, offset);
    Thread.sleep(CLOCK_IS_READ_MS);
  }
}
