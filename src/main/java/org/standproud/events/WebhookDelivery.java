package org.standproud.events;

import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.springframework.util.function.SingletonSupplier;

/** Sends one event to one subscriber. */
final class WebhookDelivery {

  private static final Duration CONNECTING = Duration.ofSeconds(5);
  private static final Duration ANSWERING = Duration.ofSeconds(15);
  private static final int LONGEST_RESULT = 500;

  private final Outbox outbox;
  private final Subscriptions subscriptions;
  private final TargetGuard guard;
  private final Clock clock;

  /**
   * A redirect leads to an unchecked address, so none is followed. Created for the first event,
   * because it reads every certificate that the machine trusts.
   */
  private final SingletonSupplier<HttpClient> client =
      SingletonSupplier.of(
          () ->
              HttpClient.newBuilder()
                  .connectTimeout(CONNECTING)
                  .followRedirects(HttpClient.Redirect.NEVER)
                  .version(HttpClient.Version.HTTP_1_1)
                  .build());

  WebhookDelivery(Outbox outbox, Subscriptions subscriptions, TargetGuard guard, Clock clock) {
    this.outbox = outbox;
    this.subscriptions = subscriptions;
    this.guard = guard;
    this.clock = clock;
  }

  /** The subscriber did not answer with 2xx. */
  static final class NotDelivered extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotDelivered(String why) {
      super(why);
    }
  }

  /**
   * Sends a row of the outbox, and deletes it when the subscriber answers with 2xx.
   *
   * @throws NotDelivered if it must be retried
   */
  void send(UUID id) {
    Optional<Outbox.Row> row = outbox.find(id);
    Optional<Subscription> to = row.flatMap(r -> subscriptions.find(r.subscription()));
    if (row.isEmpty() || to.isEmpty()) {
      outbox.done(id);
      return;
    }
    String result = answer(row.get(), to.get());
    if (result.startsWith("2")) {
      outbox.done(id);
    } else {
      outbox.tried(id, result.substring(0, Math.min(result.length(), LONGEST_RESULT)));
      throw new NotDelivered(result);
    }
  }

  /** The status of the answer, or the error. */
  private String answer(Outbox.Row row, Subscription to) {
    try {
      guard.check(to.target());
      HttpResponse<InputStream> response =
          client.obtain().send(request(row, to), HttpResponse.BodyHandlers.ofInputStream());
      response.body().close(); // The body of the answer is not read.
      return String.valueOf(response.statusCode());
    } catch (TargetGuard.Refused e) {
      return "not sent: " + e.getMessage();
    } catch (IOException e) {
      return "no answer: " + e.getClass().getSimpleName();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return "the service was stopped";
    }
  }

  private HttpRequest request(Outbox.Row row, Subscription to) {
    long now = clock.instant().getEpochSecond();
    return HttpRequest.newBuilder(to.target())
        .timeout(ANSWERING)
        .header("Content-Type", "application/cloudevents+json; charset=utf-8")
        .header("webhook-id", row.eventId())
        .header("webhook-timestamp", String.valueOf(now))
        .header("webhook-signature", to.secret().sign(row.eventId(), now, row.body()))
        .POST(HttpRequest.BodyPublishers.ofString(row.body()))
        .build();
  }
}
