package org.standproud.api;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.standproud.Standproud;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The whole service on its own port, called as a shop system would. */
public final class RunningService implements AutoCloseable {

  private static final JsonMapper JSON = JsonMapper.shared();

  private final ConfigurableApplicationContext context;
  private final Caller caller;

  private RunningService(ConfigurableApplicationContext context) {
    this.context = context;
    this.caller = new Caller(((WebServerApplicationContext) context).getWebServer().getPort());
  }

  /** A service on the shop's own cards and catalogue, shared by tests that change nothing. */
  public static RunningService shared() {
    return Shared.SERVICE;
  }

  /** A service with its own records and cards. */
  public static RunningService start(Path audit, Path rules, String... settings) {
    List<String> quietly = new ArrayList<>(arguments(audit, rules));
    quietly.addAll(List.of(settings));
    quietly.add("--logging.level.root=WARN");
    quietly.add("--spring.main.banner-mode=off");
    return new RunningService(
        SpringApplication.run(Standproud.class, quietly.toArray(String[]::new)));
  }

  /** The settings of a service beside others. */
  static List<String> arguments(Path audit, Path rules) {
    return List.of(
        "--server.port=0",
        "--standproud.audit.directory=" + audit,
        "--standproud.rules.directory=" + rules);
  }

  /** The set-up of the demo shop whose file name begins so. */
  public static ObjectNode seed(String start) {
    return (ObjectNode) JSON.readTree(text(seedFile(start)));
  }

  /** Every set-up of the demo shop. */
  public static List<Path> seedFiles() {
    try (Stream<Path> files = Files.list(Path.of("seeds/setups"))) {
      return files.sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The content of a file. */
  public static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The body of an answer. */
  public static JsonNode json(HttpResponse<String> response) {
    return JSON.readTree(response.body());
  }

  private static Path seedFile(String start) {
    return seedFiles().stream()
        .filter(file -> file.getFileName().toString().startsWith(start))
        .findFirst()
        .orElseThrow();
  }

  /** Who speaks to it. */
  public Caller caller() {
    return caller;
  }

  /** A part of the service, for what no call can bring about. */
  public <T> T part(Class<T> type) {
    return context.getBean(type);
  }

  /** Whether a part was made already. */
  boolean made(String part) {
    return context.getBeanFactory().containsSingleton(part);
  }

  /** Fetches. */
  public HttpResponse<String> get(String path) {
    return caller.get(path);
  }

  /** Has a set-up judged. */
  public HttpResponse<String> assess(Object setup) {
    return caller.assess(setup);
  }

  @Override
  public void close() {
    context.close();
  }

  /** Who speaks to a service on some port. */
  public record Caller(int port) {

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    /** Fetches. */
    public HttpResponse<String> get(String path) {
      return send(to(path).GET());
    }

    /** Has a set-up judged. */
    public HttpResponse<String> assess(Object setup) {
      return post("/v1/assessments", setup.toString(), "application/json");
    }

    /** Sends a body. */
    public HttpResponse<String> post(String path, String body, String type) {
      return send(
          to(path)
              .header("Content-Type", type)
              .POST(HttpRequest.BodyPublishers.ofString(body, StandardCharsets.UTF_8)));
    }

    /** A request to be extended. */
    public HttpRequest.Builder to(String path) {
      return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
    }

    /** Sends a request. */
    public HttpResponse<String> send(HttpRequest.Builder request) {
      try {
        return CLIENT.send(request.build(), BodyHandlers.ofString(StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private static final class Shared {
    static final RunningService SERVICE = start(records(), Path.of("rules"));

    private static Path records() {
      try {
        return Files.createTempDirectory("standproud-records");
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
