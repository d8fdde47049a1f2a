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
  private static final int MOST_SAID = 500;

  private final Outbox outbox;
  private final Subscriptions subscriptions;
  private final TargetGuard guard;
  private final Clock clock;

  /**
   * A redirect leads where no guard has looked, so none is followed. Made for the first event,
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

  /** A subscriber did not take an event. */
  static final class NotTaken extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotTaken(String why) {
      super(why);
    }
  }

  /**
   * Sends a row of the outbox, and takes it out when the subscriber answers with 2xx.
   *
   * @throws NotTaken when it has to be tried again
   */
  void send(UUID id) {
    Optional<Outbox.Row> row = outbox.find(id);
    Optional<Subscription> to = row.flatMap(r -> subscriptions.find(r.subscription()));
    if (row.isEmpty() || to.isEmpty()) {
      outbox.done(id);
      return;
    }
    String said = answer(row.get(), to.get());
    if (said.startsWith("2")) {
      outbox.done(id);
    } else {
      outbox.tried(id, said.substring(0, Math.min(said.length(), MOST_SAID)));
      throw new NotTaken(said);
    }
  }

  /** The status that was answered, or why there is none. */
  private String answer(Outbox.Row row, Subscription to) {
    try {
      guard.check(to.target());
      HttpResponse<InputStream> response =
          client.obtain().send(request(row, to), HttpResponse.BodyHandlers.ofInputStream());
      response.body().close(); // What a subscriber says beside the status is not read.
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
