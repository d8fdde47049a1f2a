package org.standproud.faults;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.standproud.api.RunningService;

/** A shop system that is received of answers, and remembers of which and how often. */
final class SubscriberShop implements AutoCloseable {

  private final HttpServer server;
  private final Set<String> ids = ConcurrentHashMap.newKeySet();
  private final AtomicInteger received = new AtomicInteger();

  SubscriberShop() throws IOException {
    server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext("/", this::take);
    server.start();
  }

  void subscribe(RunningService.Caller to) {
    String wanted =
        "{\"target\":\"http://127.0.0.1:%d/\",\"types\":[\"org.standproud.assessment.judged\"]}"
            .formatted(server.getAddress().getPort());
    assertThat(to.post("/v1/subscriptions", wanted, "application/json").statusCode())
        .isEqualTo(201);
  }

  /** Ids of what it was received. */
  Set<String> ids() {
    return Set.copyOf(ids);
  }

  /** How often it was received something. */
  int received() {
    return received.get();
  }

  private void take(HttpExchange exchange) throws IOException {
    exchange.getRequestBody().readAllBytes();
    ids.add(exchange.getRequestHeaders().getFirst("webhook-id"));
    received.incrementAndGet();
    exchange.sendResponseHeaders(204, -1);
    exchange.close();
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
