package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standproud.api.RunningService;
import org.standproud.api.ServiceProcess;

/**
 * Callers who send a byte now and then, callers who go away with half a request sent, and requests
 * that are framed wrongly; between them others who want an answer.
 */
final class SlowCallersTrial implements Trial {

  private static final String POST = "POST /v1/assessments HTTP/1.1\r\nHost: 127.0.0.1\r\n";
  private static final String JSON = "Content-Type: application/json\r\n";
  private static final long DRIP_MS = 1000;
  private static final int DRIPS = 14;

  private RunningService.Caller shop;

  @Override
  public void run(Path work, Figures figures) throws Exception {
    try (ServiceProcess service = ServiceProcess.start(work, "-Xmx300m")) {
      shop = service.caller();
      assertThat(shop.assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
      slow("slow-headers", 300, POST, figures);
      slow("slow-bodies", 150, POST + JSON + "Content-Length: 5000\r\n\r\n", figures);
      slow(
          "more-slow-bodies-than-threads",
          250,
          POST + JSON + "Content-Length: 5000\r\n\r\n",
          figures);
      slow(
          "slow-batches",
          40,
          POST.replace("/v1/assessments", "/v1/assessments/batch")
              + "Content-Type: application/x-ndjson\r\nContent-Length: 5000\r\n\r\n",
          figures);
      half(figures);
      assertThat(shop.assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
      long faults =
          service.stop().stream()
              .filter(line -> line.contains(" ERROR "))
              .peek(System.out::println)
              .count();
      figures.put("faults-in-the-log", faults);
      assertThat(faults).as("none of it is a fault of the service").isZero();
    }
  }

  /** Opens so many connections, drips into each, and has a set-up judged between two drips. */
  private void slow(String name, int count, String beginning, Figures figures) throws Exception {
    List<Socket> slow = new ArrayList<>();
    long longest = 0;
    try {
      for (int i = 0; i < count; i++) {
        Socket socket = new Socket("127.0.0.1", shop.port());
        socket.getOutputStream().write(beginning.getBytes(StandardCharsets.US_ASCII));
        slow.add(socket);
      }
      for (int drip = 0; drip < DRIPS; drip++) {
        slow.forEach(SlowCallersTrial::drip);
        Thread.sleep(DRIP_MS);
        long begin = System.nanoTime();
        assertThat(shop.assess(RunningService.seed("01")).statusCode()).isEqualTo(201);
        longest = Math.max(longest, System.nanoTime() - begin);
      }
      figures.put(name, count);
      figures.put(name + "-others-served", DRIPS);
      figures.put(name + "-others-longest-ms", longest / 1_000_000);
      answered(slow).forEach((status, n) -> figures.put(name + "-answered-" + status, n));
    } finally {
      for (Socket socket : slow) {
        socket.close();
      }
    }
  }

  private static void drip(Socket socket) {
    try {
      socket.getOutputStream().write(' ');
    } catch (IOException e) {
      // It was answered and closed already, as it should be.
    }
  }

  /** What the slow were answered so far. */
  private static Map<String, Integer> answered(List<Socket> slow) throws IOException {
    Map<String, Integer> answers = new TreeMap<>();
    for (Socket socket : slow) {
      String said = "nothing-yet";
      try {
        InputStream in = socket.getInputStream();
        if (in.available() > 0) {
          said = new String(in.readNBytes(12), StandardCharsets.US_ASCII).substring(9);
        }
      } catch (IOException e) {
        said = "closed";
      }
      answers.merge(said, 1, Integer::sum);
    }
    return answers;
  }

  private void half(Figures figures) throws Exception {
    String body = RunningService.seed("01").toString();
    List<String> halves =
        List.of(
            "PO",
            POST,
            POST + JSON + "Content-Length: 2000\r\n\r\n",
            POST + JSON + "Content-Length: 2000\r\n\r\n" + body.substring(0, 100),
            POST + JSON + "Transfer-Encoding: chunked\r\n\r\nzz\r\n",
            POST + JSON + "Transfer-Encoding: chunked\r\n\r\n5\r\nab",
            POST + JSON + "Content-Length: -5\r\n\r\n",
            POST + JSON + "Content-Length: 3\r\nContent-Length: 4\r\n\r\n{}{}",
            POST.replace("/v1/assessments", "/v1/assessments/batch")
                + "Content-Type: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n\r\n3\r\n{}",
            "\u0000\u0001\u0002\r\n\r\n");
    int sent = 0;
    for (int time = 0; time < 20; time++) {
      for (String half : halves) {
        try (Socket socket = new Socket("127.0.0.1", shop.port())) {
          socket.getOutputStream().write(half.getBytes(StandardCharsets.ISO_8859_1));
          socket.getOutputStream().flush();
          if (time % 2 == 0) {
            socket.setSoLinger(true, 0);
          }
          sent++;
        }
      }
    }
    figures.put("half-requests", sent);
  }
}
