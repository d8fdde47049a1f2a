package org.standproud;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * Writes the performance page from the files that a run left: results of JMH as JSON, and figures
 * of scripts as lines of key=value. A figure without a file is shown as not run. The words that say
 * where time goes lie beside this class.
 */
public final class PerformancePage {

  private static final Path WEIGHT = Path.of("src/bench/java/org/standproud/weight.md");
  private static final Path TARGETS = Path.of("src/bench/java/org/standproud/targets.txt");
  private static final String METHOD =
      """
      # Performance

      Written by `org.standproud.PerformancePage` from the files that the runs below left; not by hand.

      %s processors (%s), %s, Java %s, heap of the benchmarks %s, page written on %s. Benchmarks are
      JMH 1.37, average time unless said otherwise; one thread. The load of the machine over the last
      minute, when the page was written, was %s; a ratio of two rows of one run says more than a row,
      and errors are wide where they are shown wide. Runs of the same form:

          %s

      Side by side, all ways to judge are first found to agree on every demonstration set-up: on the
      kind, the draws, the severity and the finding of every card by all of them; on the draws and
      the margin of every condition by all that leave a trace. Sizes beyond the shop's own cards are
      made of copies with other limits. The plain loop, Drools from text and Easy Rules evaluate the
      same compiled conditions, so that they differ by the engine alone; with `Traced` in their names
      they leave the trace of the loop. `traced` keeps draws and numbers compared; lists of readings,
      words and the search for the value at which a card flips are worked out when read, in the loop
      they are left out.
      """;

  private final Map<String, Figure> figures = new TreeMap<>();

  /** How the scripts were run, by what they say in the files of their figures. */
  private final List<String> scripts = new ArrayList<>();

  private PerformancePage() {}

  /**
   * One figure.
   *
   * @param value the figure
   * @param error half the width of its interval of 99.9 %, NaN if it has none
   * @param unit its unit
   */
  private record Figure(double value, double error, String unit) {
    String text() {
      String wide = Double.isNaN(error) ? "" : " ± " + number(error);
      return number(value) + wide + " " + unit;
    }
  }

  /**
   * Writes the page.
   *
   * @param args folder of the results, file of the page, command of the run, heap of the benchmarks
   * @throws IOException if a file cannot be read or written
   */
  public static void main(String[] args) throws IOException {
    PerformancePage page = new PerformancePage();
    page.read(Path.of(args[0]));
    Files.writeString(Path.of(args[1]), page.text(args[2], args[3]));
  }

  private void read(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        if (name.endsWith(".json") && Files.size(file) > 0) {
          new ObjectMapper().readTree(Files.readString(file)).forEach(this::benchmark);
        } else if (name.endsWith(".txt")) {
          Files.readAllLines(file).forEach(line -> figure(name.replace(".txt", ""), line));
        }
      }
    }
  }

  private void benchmark(JsonNode result) {
    String[] path = result.get("benchmark").stringValue().split("\\.");
    StringBuilder key = new StringBuilder(path[path.length - 2] + "." + path[path.length - 1]);
    JsonNode params = result.path("params");
    params.propertyNames().forEach(p -> key.append(" " + p + "=" + params.get(p).stringValue()));
    JsonNode score = result.get("primaryMetric");
    String unit = score.get("scoreUnit").stringValue().replace("/op", "");
    figures.put(
        key.toString(), new Figure(real(score.get("score")), real(score.get("scoreError")), unit));
  }

  /** JMH writes an error it does not know as the text NaN. */
  private static double real(JsonNode number) {
    return number.isNumber() ? number.doubleValue() : Double.NaN;
  }

  private void figure(String file, String line) {
    if (line.startsWith("#")) {
      scripts.add(line.substring(1).strip());
      return;
    }
    int equals = line.indexOf('=');
    if (equals > 0) {
      String key = file + "." + line.substring(0, equals).strip();
      figures.put(key, new Figure(Double.parseDouble(line.substring(equals + 1)), Double.NaN, ""));
    }
  }

  private String text(String command, String heap) throws IOException {
    List<String> commands = new ArrayList<>(List.of(command));
    commands.addAll(scripts);
    StringBuilder text = new StringBuilder();
    text.append(
        METHOD.formatted(
            Runtime.getRuntime().availableProcessors(),
            System.getProperty("os.arch"),
            System.getProperty("os.name"),
            System.getProperty("java.version"),
            heap,
            LocalDate.now(),
            number(ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage()),
            String.join("\n    ", commands)));
    beside(text);
    elsewhere(text);
    targets(text);
    text.append(Files.readString(WEIGHT));
    everything(text);
    return text.toString();
  }

  private void beside(StringBuilder text) {
    text.append("\n## Cards judged in several ways\n\nMicroseconds a set-up; in brackets how many");
    text.append(" times the plain loop that leaves the same trace.\n\n");
    List<String> sizes = List.of("16", "70", "500", "2000");
    text.append("| | " + String.join(" cards | ", sizes) + " cards |\n|---|---|---|---|---|\n");
    String by = "SideBySideBenchmark.";
    for (String row :
        List.of(
            "loopTraced",
            "loopKinds",
            "traced",
            "easyRulesTraced",
            "droolsKeptTraced",
            "kinds",
            "easyRules",
            "droolsKeptContainer",
            "droolsNewContainer")) {
      text.append("| ").append(row);
      for (String size : sizes) {
        Figure one = figures.get(by + row + " cards=" + size);
        Figure limit = figures.get(by + "loopTraced cards=" + size);
        text.append(" | ").append(one == null ? "not run" : number(one.value()));
        if (one != null && limit != null) {
          text.append(" (" + number(one.value() / limit.value()) + ")");
        }
      }
      text.append(" |\n");
    }
  }

  private void elsewhere(StringBuilder text) {
    text.append(
        "\n## Cards that cannot apply\n\nAll of the shop's cards and so many more that are");
    text.append(" about another operation; microseconds a set-up.\n\n");
    List<String> sizes = List.of("0", "300", "600", "1200");
    text.append("| | " + String.join(" more | ", sizes) + " more |\n|---|---|---|---|---|\n");
    for (String row : List.of("traced", "kinds")) {
      text.append("| ").append(row);
      for (String size : sizes) {
        Figure one = figures.get("ElsewhereBenchmark." + row + " elsewhere=" + size);
        text.append(" | ").append(one == null ? "not run" : number(one.value()));
      }
      text.append(" |\n");
    }
  }

  /** A target a line: words; figure; figure it is divided by or 1; most or least; wanted; why. */
  private void targets(StringBuilder text) throws IOException {
    text.append(
        "\n## Targets\n\n| | wanted | got | | where the rest goes |\n|---|---|---|---|---|\n");
    for (String line : Files.readAllLines(TARGETS)) {
      String[] part = line.split(";", -1);
      if (line.startsWith("#") || part.length < 6) {
        continue;
      }
      double wanted = Double.parseDouble(part[4].strip());
      boolean most = part[3].strip().equals("most");
      double got = got(part[1].strip()) / got(part[2].strip());
      String met =
          Double.isNaN(got) ? "" : (most ? got <= wanted : got >= wanted) ? "met" : "missed";
      text.append("| " + part[0].strip() + " | at " + part[3].strip() + " " + number(wanted));
      text.append(" | " + (Double.isNaN(got) ? "not run" : number(got)) + " | " + met + " | ");
      text.append(part[5].strip()).append(" |\n");
    }
  }

  private double got(String key) {
    Figure figure = figures.get(key);
    return key.equals("1") ? 1 : figure == null ? Double.NaN : figure.value();
  }

  private void everything(StringBuilder text) {
    text.append("\n## All figures of the run\n\n| | |\n|---|---|\n");
    figures.forEach((key, figure) -> text.append("| " + key + " | " + figure.text() + " |\n"));
  }

  private static String number(double value) {
    return value >= 100 || value == 0
        ? String.format(Locale.ROOT, "%,.0f", value)
        : String.format(Locale.ROOT, value >= 10 ? "%.1f" : "%.2f", value);
  }
}
