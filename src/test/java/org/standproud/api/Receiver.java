package org.standproud.api;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.IntUnaryOperator;

/** A shop system that is sent events, and answers the first, second, third … as a test says. */
final class Receiver implements AutoCloseable {

  private final HttpServer server;
  private final BlockingQueue<Received> received = new LinkedBlockingQueue<>();
  private int count;

  /** What was sent, and how it was answered. */
  record Received(
      String id, String timestamp, String signature, String type, String body, int status) {}

  Receiver(IntUnaryOperator status) {
    try {
      server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    server.createContext("/", exchange -> take(exchange, status));
    server.start();
  }

  String url() {
    return "http://127.0.0.1:" + server.getAddress().getPort() + "/events";
  }

  /** The next that is sent, waited for as long as a slow machine may need. */
  Received next() throws InterruptedException {
    Received next = received.poll(60, TimeUnit.SECONDS);
    if (next == null) {
      throw new AssertionError("nothing was sent");
    }
    return next;
  }

  private synchronized void take(HttpExchange exchange, IntUnaryOperator status)
      throws IOException {
    String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
    int answer = status.applyAsInt(++count);
    var headers = exchange.getRequestHeaders();
    if (answer == 302) {
      exchange.getResponseHeaders().set("Location", "/elsewhere");
    }
    exchange.sendResponseHeaders(answer, -1);
    exchange.close();
    received.add(
        new Received(
            headers.getFirst("webhook-id"),
            headers.getFirst("webhook-timestamp"),
            headers.getFirst("webhook-signature"),
            headers.getFirst("Content-Type"),
            body,
            answer));
  }

  @Override
  public void close() {
    server.stop(0);
  }
}
