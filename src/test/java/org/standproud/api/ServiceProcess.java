package org.standproud.api;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.standproud.Standproud;

/**
 * The service in a process of its own, which ends as kill -9 ends it. {@code -Dtest.jar} names a
 * packaged one to start, else it is the one that was compiled.
 */
public final class ServiceProcess implements AutoCloseable {

  private static final Pattern STARTED = Pattern.compile("Tomcat started on port (\\d+)");

  private final Process process;
  private final RunningService.Caller caller;
  private final Thread listener;
  private final ConcurrentLinkedQueue<String> heard;

  private ServiceProcess(
      Process process, int port, Thread listener, ConcurrentLinkedQueue<String> heard) {
    this.process = process;
    this.listener = listener;
    this.heard = heard;
    this.caller = new RunningService.Caller(port);
  }

  /**
   * Starts a service on the shop's cards.
   *
   * @param audit where its records lie
   * @param more settings, and options of the virtual machine, which begin with -X
   */
  public static ServiceProcess start(Path audit, String... more) throws IOException {
    return start(Map.of(), audit, more);
  }

  /**
   * Starts a service on the shop's cards in an environment of its own.
   *
   * @param environment variables beside those of this process
   * @param audit where its records lie
   * @param more settings, and options of the virtual machine, which begin with -X
   */
  public static ServiceProcess start(Map<String, String> environment, Path audit, String... more)
      throws IOException {
    return start(program(), environment, audit, more);
  }

  /**
   * Starts a packaged service on the shop's cards.
   *
   * @param jar the package
   * @param audit where its records lie
   * @param more settings, and options of the virtual machine, which begin with -X
   */
  public static ServiceProcess startPackaged(Path jar, Path audit, String... more)
      throws IOException {
    return start(List.of("-jar", jar.toString()), Map.of(), audit, more);
  }

  private static ServiceProcess start(
      List<String> program, Map<String, String> environment, Path audit, String... more)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    List.of(more).stream().filter(option -> option.startsWith("-X")).forEach(command::add);
    command.addAll(program);
    // A setting that is given twice would be a list of two.
    RunningService.arguments(audit, Path.of("rules")).stream()
        .filter(usual -> Stream.of(more).noneMatch(one -> name(one).equals(name(usual))))
        .forEach(command::add);
    List.of(more).stream().filter(option -> !option.startsWith("-X")).forEach(command::add);
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().putAll(environment);
    Process process = builder.start();
    BufferedReader said = process.inputReader();
    int port = port(said);
    ConcurrentLinkedQueue<String> heard = new ConcurrentLinkedQueue<>();
    Thread listener = new Thread(() -> said.lines().forEach(heard::add));
    listener.setDaemon(true);
    listener.start(); // Or its log would fill the pipe, and it would wait.
    return new ServiceProcess(process, port, listener, heard);
  }

  private static String name(String setting) {
    return setting.substring(0, setting.indexOf('=') + 1);
  }

  private static List<String> program() {
    String jar = System.getProperty("test.jar");
    return jar == null
        // Not compiled as for long: it starts in half the processor time.
        ? List.of(
            "-XX:TieredStopAtLevel=1",
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            Standproud.class.getName())
        : List.of("-jar", jar);
  }

  /**
   * Asks it to end, as an operator would, and waits until it has.
   *
   * @return what it logged since it started
   */
  public List<String> stop() throws InterruptedException {
    process.toHandle().destroy(); // Process.destroy would close its log unread.
    process.waitFor();
    listener.join();
    return List.copyOf(heard);
  }

  /** Who speaks to it. */
  public RunningService.Caller caller() {
    return caller;
  }

  /** The number of its process. */
  public long pid() {
    return process.pid();
  }

  /** Whether it still runs. */
  public boolean runs() {
    return process.isAlive();
  }

  /** What it logged since it started. */
  public List<String> heard() {
    return List.copyOf(heard);
  }

  @Override
  public void close() throws InterruptedException {
    process.toHandle().destroyForcibly();
    process.waitFor();
  }

  private static int port(BufferedReader said) throws IOException {
    List<String> lines = new ArrayList<>();
    String line;
    while ((line = said.readLine()) != null) {
      lines.add(line);
      Matcher started = STARTED.matcher(line);
      if (started.find()) {
        return Integer.parseInt(started.group(1));
      }
    }
    throw new IllegalStateException("the service did not start: " + String.join("\n", lines));
  }
}
