package org.standproud.faults;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.standproud.api.ServiceProcess;

/**
 * What a service holds, looked at from outside after it was made to collect its garbage.
 *
 * @param heapMb heap still in use, in MB
 * @param metaspaceMb classes, in MB
 * @param residentMb memory that the operating system gave, in MB
 * @param threads live threads
 * @param files open files and sockets
 * @param records answers given since it started
 */
record Vitals(
    double heapMb,
    double metaspaceMb,
    double residentMb,
    double threads,
    double files,
    double records) {

  private static final double MB = 1024 * 1024;

  static Vitals of(ServiceProcess service) throws IOException, InterruptedException {
    collect(service);
    String metrics = service.caller().get("/actuator/prometheus").body();
    return new Vitals(
        sum(metrics, "jvm_memory_used_bytes{area=\"heap\"") / MB,
        sum(metrics, "jvm_memory_used_bytes{area=\"nonheap\",id=\"Metaspace\"") / MB,
        residentMb(service.pid()),
        sum(metrics, "jvm_threads_live_threads"),
        files(service.pid()),
        sum(metrics, "standproud_assessments_total"));
  }

  /** Twice, because what is finalised or only weakly held goes with the second. */
  private static void collect(ServiceProcess service) throws IOException, InterruptedException {
    for (int time = 0; time < 2; time++) {
      Process jcmd =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(),
                  String.valueOf(service.pid()),
                  "GC.run")
              .redirectErrorStream(true)
              .start();
      String said = new String(jcmd.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      if (jcmd.waitFor() != 0) {
        List<String> heard = service.heard();
        throw new IllegalStateException(
            "runs: %s; jcmd: %s; log: %s"
                .formatted(
                    service.runs(),
                    said.strip(),
                    heard.subList(Math.max(0, heard.size() - 40), heard.size())));
      }
    }
  }

  private static double sum(String metrics, String begin) {
    return metrics
        .lines()
        .filter(line -> line.startsWith(begin))
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
        .sum();
  }

  private static double residentMb(long pid) throws IOException {
    return Files.readAllLines(Path.of("/proc/" + pid + "/status")).stream()
        .filter(line -> line.startsWith("VmRSS:"))
        .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
        .sum();
  }

  private static long files(long pid) throws IOException {
    try (Stream<Path> open = Files.list(Path.of("/proc/" + pid + "/fd"))) {
      return open.count();
    }
  }
}
