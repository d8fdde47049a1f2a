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

/** The answer of a server that refuses by itself, without the application behind it. */
class ProblemValveTest {

  private @TempDir Path directory;

  @Test
  void anUnknownAddressIsNotFound() throws Exception {
    HttpResponse<String> reply = replyOf(new Http11NioProtocol());

    assertThat(reply.statusCode()).isEqualTo(404);
    assertThat(reply.body()).contains("/problems/not-found", "\"status\":404");
    assertThat(reply.headers().firstValue("Retry-After")).isEmpty();
  }

  @Test
  void aValidRequestDuringShutdownGetsRetryAfter() throws Exception {
    HttpResponse<String> reply = replyOf(new PausedBetween());

    assertThat(reply.statusCode()).isEqualTo(503);
    assertThat(reply.body()).contains("/problems/stopping", "\"status\":503");
    assertThat(reply.headers().firstValue("Retry-After")).hasValue("5");
    assertThat(reply.headers().firstValue("Content-Type")).hasValue("application/problem+json");
  }

  private HttpResponse<String> replyOf(Http11NioProtocol protocol) throws Exception {
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

  /** Shutdown begins after the request was accepted and before its headers were read. */
  private static final class PausedBetween extends Http11NioProtocol {

    private final AtomicInteger asked = new AtomicInteger();

    @Override
    public boolean isPaused() {
      return asked.getAndIncrement() > 0;
    }
  }
}
