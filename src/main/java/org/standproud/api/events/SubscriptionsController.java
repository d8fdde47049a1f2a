package org.standproud.api.events;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.media.Content;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.parameters.RequestBody;
import io.swagger.v3.oas.annotations.responses.ApiResponse;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.security.Principal;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.standproud.api.RequestBodies;
import org.standproud.audit.AuditRecord;
import org.standproud.events.EventType;
import org.standproud.events.Outbox;
import org.standproud.events.Subscription;
import org.standproud.events.Subscriptions;
import org.standproud.events.TargetGuard;
import org.standproud.events.WebhookSecret;
import org.standproud.refusal.BadParameterException;
import org.standproud.refusal.NotFoundException;

/** Webhook subscriptions. */
@Tag(name = "Events", description = "Webhooks: events sent to shop systems.")
@RestController
@RequestMapping(path = "/v1/subscriptions", produces = MediaType.APPLICATION_JSON_VALUE)
class SubscriptionsController {

  private static final Clock CLOCK = Clock.systemUTC();
  private static final int LONGEST_TARGET = 2_000;
  private static final int MOST_SHOWN = 100;

  private final Subscriptions subscriptions;
  private final Outbox outbox;
  private final TargetGuard guard;
  private final RequestBodies bodies;

  SubscriptionsController(
      Subscriptions subscriptions, Outbox outbox, TargetGuard guard, RequestBodies bodies) {
    this.subscriptions = subscriptions;
    this.outbox = outbox;
    this.guard = guard;
    this.bodies = bodies;
  }

  /**
   * A request for a subscription.
   *
   * @param target where events are sent, by POST; https, or a host that the settings of the service
   *     name as inside
   * @param types the types of events
   */
  @Schema(name = "SubscriptionRequest")
  record SubscriptionRequest(String target, List<String> types) {}

  /**
   * A webhook subscription.
   *
   * @param id its id
   * @param target where events are sent
   * @param types the types of events
   * @param madeBy its creator
   * @param madeAt time of creation
   * @param secret signs every event (Standard Webhooks); returned only when the subscription is
   *     created
   * @param waiting number of events not sent yet
   * @param dead number of events no longer tried
   */
  @Schema(name = "Subscription")
  record SubscriptionView(
      UUID id,
      String target,
      List<String> types,
      String madeBy,
      Instant madeAt,
      @Nullable String secret,
      long waiting,
      long dead) {}

  /**
   * An event that has not reached its subscriber.
   *
   * @param id id of the delivery
   * @param event id of the event
   * @param type type of the event
   * @param made time of the event
   * @param state waiting, or dead when it is no longer tried
   * @param tries number of attempts
   * @param tried time of the last attempt
   * @param result result of the last attempt: the status, or the error
   */
  record Delivery(
      UUID id,
      String event,
      String type,
      Instant made,
      String state,
      int tries,
      @Nullable Instant tried,
      @Nullable String result) {}

  @Operation(
      operationId = "subscribe",
      summary = "Subscribe to events",
      description =
          "Every event is sent by POST as a CloudEvent 1.0 in structured JSON mode, signed as"
              + " the Standard Webhooks specification says (webhook-id, webhook-timestamp,"
              + " webhook-signature: HMAC-SHA256 over id.timestamp.body). It is retried with"
              + " growing delays until it is answered with 2xx, so an event may arrive twice,"
              + " with the same webhook-id, and after a later one. Redirects are not followed. A"
              + " target on this machine or in a private network must be listed in the settings"
              + " of the service.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = SubscriptionRequest.class))))
  @ApiResponse(
      responseCode = "201",
      description = "The subscription, with its secret, only this" + " once.")
  @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<SubscriptionView> subscribe(HttpServletRequest request, Principal caller)
      throws IOException {
    SubscriptionRequest requested = bodies.read(request, SubscriptionRequest.class);
    Subscription made =
        new Subscription(
            AuditRecord.newId(),
            target(requested.target()),
            types(requested.types()),
            WebhookSecret.fresh(),
            caller.getName(),
            CLOCK.instant().truncatedTo(ChronoUnit.MICROS));
    subscriptions.add(made);
    return ResponseEntity.created(URI.create("/v1/subscriptions/" + made.id()))
        .body(view(made, made.secret().text()));
  }

  @Operation(operationId = "listSubscriptions", summary = "List the subscriptions")
  @ApiResponse(responseCode = "200", description = "Every subscription, without its secret.")
  @GetMapping
  List<SubscriptionView> list() {
    return subscriptions.all().stream().map(s -> view(s, null)).toList();
  }

  @Operation(operationId = "getSubscription", summary = "One subscription")
  @ApiResponse(responseCode = "200", description = "The subscription, without its secret.")
  @GetMapping("/{id}")
  SubscriptionView get(@PathVariable UUID id) {
    return view(existing(id), null);
  }

  @Operation(
      operationId = "unsubscribe",
      summary = "Delete a subscription",
      description = "Events that still wait for it are dropped.")
  @ApiResponse(responseCode = "204", description = "The subscription is deleted.")
  @DeleteMapping("/{id}")
  ResponseEntity<Void> unsubscribe(@PathVariable UUID id) {
    if (!subscriptions.remove(id)) {
      throw missing();
    }
    return ResponseEntity.noContent().build();
  }

  @Operation(
      operationId = "listDeliveries",
      summary = "List the undelivered events of a subscription",
      description = "The oldest hundred, waiting or dead, with the result of the last attempt.")
  @ApiResponse(responseCode = "200", description = "The events.")
  @GetMapping("/{id}/deliveries")
  List<Delivery> deliveries(@PathVariable UUID id) {
    return outbox.of(existing(id).id(), MOST_SHOWN).stream()
        .map(SubscriptionsController::view)
        .toList();
  }

  @Operation(operationId = "retryDelivery", summary = "Retry a dead event")
  @ApiResponse(responseCode = "202", description = "It is tried again, with the first delay.")
  @PostMapping("/{id}/deliveries/{delivery}/retry")
  ResponseEntity<Void> retry(@PathVariable UUID id, @PathVariable UUID delivery) {
    existing(id);
    if (outbox.find(delivery).filter(row -> row.subscription().equals(id)).isEmpty()) {
      throw new NotFoundException("The subscription has no such undelivered event.");
    }
    if (!outbox.revive(delivery)) {
      throw new ErrorResponseException(
          HttpStatus.CONFLICT,
          ProblemDetail.forStatusAndDetail(HttpStatus.CONFLICT, "The event is still being tried."),
          null);
    }
    return ResponseEntity.accepted().build();
  }

  private Subscription existing(UUID id) {
    return subscriptions.find(id).orElseThrow(SubscriptionsController::missing);
  }

  private static NotFoundException missing() {
    return new NotFoundException("There is no subscription with this id.");
  }

  private URI target(String text) {
    try {
      URI target = new URI(text);
      if (text.length() > LONGEST_TARGET) {
        throw new BadParameterException("target", LONGEST_TARGET + " characters at most");
      }
      guard.check(target);
      return target;
    } catch (URISyntaxException e) {
      throw new BadParameterException("target", "is not a URL");
    } catch (TargetGuard.Refused e) {
      throw new BadParameterException("target", String.valueOf(e.getMessage()));
    }
  }

  private static Set<EventType> types(List<String> codes) {
    Set<EventType> types = EnumSet.noneOf(EventType.class);
    List<String> known = new ArrayList<>();
    for (EventType type : EventType.values()) {
      known.add(type.code());
    }
    for (String code : codes) {
      types.add(
          EventType.of(code)
              .orElseThrow(
                  () ->
                      new BadParameterException(
                          "types", "must be of " + String.join(", ", known))));
    }
    if (types.isEmpty()) {
      throw new BadParameterException("types", "must be of " + String.join(", ", known));
    }
    return types;
  }

  private SubscriptionView view(Subscription s, @Nullable String secret) {
    return new SubscriptionView(
        s.id(),
        s.target().toString(),
        s.types().stream().map(EventType::code).sorted().toList(),
        s.madeBy(),
        s.madeAt(),
        secret,
        outbox.count(s.id(), Outbox.State.WAITING),
        outbox.count(s.id(), Outbox.State.DEAD));
  }

  private static Delivery view(Outbox.Row row) {
    return new Delivery(
        row.id(),
        row.eventId(),
        row.type(),
        row.madeAt(),
        row.state(),
        row.tries(),
        row.triedAt(),
        row.result());
  }
}
