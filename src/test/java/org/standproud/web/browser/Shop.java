package org.standproud.web.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.web.server.context.WebServerApplicationContext;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.util.FileSystemUtils;
import org.standproud.Standproud;
import org.standproud.access.Role;
import org.standproud.access.keys.KeyRing;
import org.standproud.web.SeedSetups;
import tools.jackson.databind.json.JsonMapper;

/** The whole service on a port of its own, with records and cards that tests may change. */
final class Shop implements AutoCloseable {

  private static final HttpClient CLIENT = HttpClient.newHttpClient();

  private final Path folder;
  private final ConfigurableApplicationContext context;

  private Shop(Path folder, ConfigurableApplicationContext context) {
    this.folder = folder;
    this.context = context;
  }

  /**
   * Opens one.
   *
   * @param settings properties that are not as usual
   */
  static Shop open(Map<String, String> settings) {
    try {
      Path folder = Files.createTempDirectory("standproud-browser");
      Path rules = folder.resolve("rules");
      FileSystemUtils.copyRecursively(Path.of("rules"), rules);
      List<String> arguments =
          new ArrayList<>(
              List.of(
                  "--server.port=0",
                  "--logging.level.root=WARN",
                  "--spring.main.banner-mode=off",
                  "--standproud.audit.directory=" + folder.resolve("data"),
                  "--standproud.rules.directory=" + rules));
      settings.forEach((name, value) -> arguments.add("--" + name + "=" + value));
      return new Shop(
          folder, SpringApplication.run(Standproud.class, arguments.toArray(String[]::new)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Where its pages are. */
  String address() {
    return "http://127.0.0.1:" + ((WebServerApplicationContext) context).getWebServer().getPort();
  }

  /** The folder of its cards. */
  Path cards() {
    return folder.resolve("rules");
  }

  /** Judges a demonstration set-up; the id of the record. */
  String assessed(String seed) {
    return judged(SeedSetups.json(seed));
  }

  /** Judges a request; the id of the record. */
  String judged(String json) {
    HttpResponse<String> response =
        send(
            HttpRequest.newBuilder(URI.create(address() + "/v1/assessments"))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(json)));
    if (response.statusCode() != 201) {
      throw new IllegalStateException(response.body());
    }
    return JsonMapper.shared().readTree(response.body()).path("id").asString();
  }

  /** A key, valid for an hour. */
  String key(String caller, Role... roles) {
    return context
        .getBean(KeyRing.class)
        .make(caller, Set.of(roles), Instant.now().plus(Duration.ofHours(1)), "test")
        .text()
        .text();
  }

  /** What is at an address. */
  HttpResponse<String> get(String path) {
    return send(HttpRequest.newBuilder(URI.create(address() + path)));
  }

  /** How what is at an address is packed when the caller takes gzip; empty if it is not. */
  String packed(String path) {
    return send(HttpRequest.newBuilder(URI.create(address() + path))
            .header("Accept-Encoding", "gzip"))
        .headers()
        .firstValue("Content-Encoding")
        .orElse("");
  }

  private static HttpResponse<String> send(HttpRequest.Builder request) {
    try {
      return CLIENT.send(request.build(), BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The demonstration set-up whose name begins so. */
  static String seed(String start) {
    return Stream.of(SeedSetups.names())
        .flatMap(List::stream)
        .filter(name -> name.startsWith(start))
        .findFirst()
        .orElseThrow();
  }

  @Override
  public void close() {
    context.close();
    try {
      FileSystemUtils.deleteRecursively(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
