package org.standproud.faults.fuzz;

import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.standproud.faults.fuzz.ContractOperations.Body;
import org.standproud.faults.fuzz.ContractOperations.Operation;
import org.standproud.faults.fuzz.ContractOperations.Parameter;

/**
 * Hostile requests over the whole contract: the same number gives the same request. Path and method
 * take turns; parameters and bodies are right as often as not, so that some get far.
 */
public final class HostileRequests {

  private static final Duration PATIENCE = Duration.ofSeconds(60);

  /** What takes a third of a second of a core or more is found less often, to be done in time. */
  private static final List<String> RECOMMENDATIONS =
      java.util.stream.Stream.of(
              "remedies", "envelope", "envelope.svg", "other-holds", "plan", "chance", "questions")
          .map(name -> "/v1/assessments/{id}/" + name)
          .toList();

  private static final List<String> TYPES =
      List.of("application/json", "text/csv", "application/x-ndjson", "*/*", "text/html", "x", "");

  private final ContractOperations contract;
  private final Known known;
  private final URI service;
  private final long seed;

  /**
   * Names of what is there, by the path whose parameter they are.
   *
   * @see #of(String, String)
   */
  @FunctionalInterface
  public interface Known {

    /**
     * Values of a parameter that lead somewhere.
     *
     * @param path of the operation
     * @param name of the parameter
     */
    List<String> of(String path, String name);
  }

  /**
   * Requests to a service.
   *
   * @param contract what it takes
   * @param known what is there
   * @param service its address
   * @param seed another seed gives other requests
   */
  public HostileRequests(ContractOperations contract, Known known, URI service, long seed) {
    this.contract = contract;
    this.known = known;
    this.service = service;
    this.seed = seed;
  }

  /** The request of a number. */
  public HttpRequest request(int number) {
    Operation operation = contract.all().get(number % contract.all().size());
    Hostile hostile = new Hostile(contract, new Random(seed * 1_000_003 + number));
    String method =
        hostile.in(97) ? operation.method() : hostile.one(List.of("PUT", "PATCH", "TRACE", "QUX"));
    HttpRequest.Builder request =
        HttpRequest.newBuilder(
                service.resolve(path(operation, hostile) + query(operation, hostile)))
            .timeout(PATIENCE);
    headers(operation, hostile, request);
    byte[] body = body(operation, hostile, request);
    return request
        .method(method, body == null ? BodyPublishers.noBody() : BodyPublishers.ofByteArray(body))
        .build();
  }

  private String path(Operation operation, Hostile hostile) {
    String path = operation.path();
    for (Parameter parameter : operation.parameters()) {
      if (parameter.in().equals("path")) {
        List<String> there = known.of(operation.path(), parameter.name());
        String value =
            hostile.in(RECOMMENDATIONS.contains(operation.path()) ? 15 : 65) && !there.isEmpty()
                ? hostile.one(there)
                : hostile.parameter(parameter.schema());
        path = path.replace("{" + parameter.name() + "}", encoded(value));
      }
    }
    return path;
  }

  private static String query(Operation operation, Hostile hostile) {
    List<String> query = new ArrayList<>();
    for (Parameter parameter : operation.parameters()) {
      if (parameter.in().equals("query") && hostile.in(50)) {
        int times = hostile.in(5) ? 3 : 1;
        for (int i = 0; i < times; i++) {
          query.add(parameter.name() + "=" + encoded(hostile.parameter(parameter.schema())));
        }
      }
    }
    if (hostile.in(5)) {
      query.add(encoded(hostile.text()) + "=" + encoded(hostile.text()));
    }
    return query.isEmpty() ? "" : "?" + String.join("&", query);
  }

  private static void headers(Operation operation, Hostile hostile, HttpRequest.Builder request) {
    for (Parameter parameter : operation.parameters()) {
      if (parameter.in().equals("header") && hostile.in(60)) {
        set(
            request,
            parameter.name(),
            hostile.in(30) ? "*" : hostile.parameter(parameter.schema()));
      }
    }
    if (hostile.in(15)) {
      set(request, "Accept", hostile.one(TYPES));
    }
    if (hostile.in(3)) {
      set(request, "traceparent", hostile.text());
      set(request, "If-None-Match", hostile.text());
      set(request, "Range", "bytes=0-0,-1,5-4");
      set(request, "Authorization", "Bearer " + hostile.text());
    }
  }

  private byte @Nullable [] body(
      Operation operation, Hostile hostile, HttpRequest.Builder request) {
    if (operation.bodies().isEmpty()) {
      return hostile.in(90) ? null : hostile.garbled(hostile.text());
    }
    Body body = hostile.one(operation.bodies());
    set(request, "Content-Type", hostile.in(96) ? body.type() : hostile.one(TYPES));
    String text =
        body.example().isMissingNode() || hostile.in(40)
            ? hostile.value(body.schema(), 0).toString()
            : hostile.spoilt(body.example()).toString();
    return hostile.in(20) ? hostile.garbled(text) : text.getBytes(StandardCharsets.UTF_8);
  }

  /** A header that no client could send is not sent. */
  private static void set(HttpRequest.Builder request, String name, String value) {
    try {
      request.setHeader(name, value);
    } catch (IllegalArgumentException e) {
      request.setHeader(name, "x");
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
  }
}
