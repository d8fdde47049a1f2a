package org.standproud.api.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.catalina.LifecycleException;
import org.apache.catalina.connector.Connector;
import org.apache.catalina.core.StandardHost;
import org.apache.catalina.startup.Tomcat;
import org.apache.coyote.http11.Http11NioProtocol;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a server tells that refuses by itself, with nothing of the application behind it. */
class ProblemValveTest {

  private @TempDir Path directory;

  @Test
  void whatIsNotThereIsToldAsSuch() throws Exception {
    HttpResponse<String> told = toldBy(new Http11NioProtocol());

    assertThat(told.statusCode()).isEqualTo(404);
    assertThat(told.body()).contains("/problems/not-found", "\"status\":404");
    assertThat(told.headers().firstValue("Retry-After")).isEmpty();
  }

  @Test
  void aSoundRequestThatComesAsTheServerStopsIsToldToComeAgain() throws Exception {
    HttpResponse<String> told = toldBy(new PausedBetween());

    assertThat(told.statusCode()).isEqualTo(503);
    assertThat(told.body()).contains("/problems/stopping", "\"status\":503");
    assertThat(told.headers().firstValue("Retry-After")).hasValue("5");
    assertThat(told.headers().firstValue("Content-Type")).hasValue("application/problem+json");
  }

  private HttpResponse<String> toldBy(Http11NioProtocol protocol) throws Exception {
    Tomcat server = serving(protocol);
    server.start();
    try {
      URI nothing = URI.create("http://127.0.0.1:" + server.getConnector().getLocalPort() + "/no");
      return HttpClient.newHttpClient()
          .send(HttpRequest.newBuilder(nothing).build(), HttpResponse.BodyHandlers.ofString());
    } finally {
      stop(server);
    }
  }

  private Tomcat serving(Http11NioProtocol protocol) {
    Tomcat server = new Tomcat();
    server.setBaseDir(directory.toString());
    Connector connector = new Connector(protocol);
    connector.setPort(0);
    server.setConnector(connector);
    ((StandardHost) server.getHost()).setErrorReportValveClass(ProblemValve.class.getName());
    server.addContext("", directory.toString());
    return server;
  }

  private static void stop(Tomcat server) throws LifecycleException {
    server.stop();
    server.destroy();
  }

  /** Told to stop after it took up a request and before it read the headers. */
  private static final class PausedBetween extends Http11NioProtocol {

    private final AtomicInteger asked = new AtomicInteger();

    @Override
    public boolean isPaused() {
      return asked.getAndIncrement() > 0;
    }
  }
}
