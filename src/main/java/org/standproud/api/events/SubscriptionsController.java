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

/** Who is told of what. */
@Tag(name = "Events", description = "What happens, sent to shop systems as it happens.")
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
   * A subscription as it is asked for.
   *
   * @param target where events are to be sent
   * @param types which
   */
  @Schema(name = "SubscriptionRequest")
  record Wanted(String target, List<String> types) {}

  /**
   * A subscription as it is told.
   *
   * @param id its id
   * @param target where events are sent
   * @param types which
   * @param madeBy who asked for it
   * @param madeAt when
   * @param secret what signs them, told only once
   * @param waiting events that are still to be sent
   * @param dead events that are not tried any more
   */
  @Schema(name = "Subscription")
  record Told(
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
   * @param type its type
   * @param made when it happened
   * @param state waiting, or dead when it is not tried any more
   * @param tries how often it was tried
   * @param tried when it was last tried
   * @param said what came of that: the status answered, or why there is none
   */
  record Delivery(
      UUID id,
      String event,
      String type,
      Instant made,
      String state,
      int tries,
      @Nullable Instant tried,
      @Nullable String said) {}

  @Operation(
      operationId = "subscribe",
      summary = "Have events sent",
      description =
          "Every event is sent by POST as a CloudEvent 1.0 in structured JSON mode, signed as the"
              + " Standard Webhooks specification says (webhook-id, webhook-timestamp,"
              + " webhook-signature: HMAC-SHA256 over id.timestamp.body). It is sent again, ever"
              + " later, until it is answered with 2xx: an event may come twice, known by its"
              + " webhook-id, and after a later one. Redirects are not followed. A target inside"
              + " this machine or a private network has to be named in the settings of the service.",
      requestBody =
          @RequestBody(
              required = true,
              content = @Content(schema = @Schema(implementation = Wanted.class))))
  @ApiResponse(responseCode = "201", description = "The subscription, with its secret this once.")
  @PostMapping(consumes = MediaType.APPLICATION_JSON_VALUE)
  ResponseEntity<Told> subscribe(HttpServletRequest request, Principal caller) throws IOException {
    Wanted wanted = bodies.read(request, Wanted.class);
    Subscription made =
        new Subscription(
            AuditRecord.newId(),
            target(wanted.target()),
            types(wanted.types()),
            WebhookSecret.fresh(),
            caller.getName(),
            CLOCK.instant().truncatedTo(ChronoUnit.MICROS));
    subscriptions.add(made);
    return ResponseEntity.created(URI.create("/v1/subscriptions/" + made.id()))
        .body(told(made, made.secret().text()));
  }

  @Operation(operationId = "listSubscriptions", summary = "Who is told of what")
  @ApiResponse(responseCode = "200", description = "Every subscription, without its secret.")
  @GetMapping
  List<Told> list() {
    return subscriptions.all().stream().map(s -> told(s, null)).toList();
  }

  @Operation(operationId = "getSubscription", summary = "One subscription")
  @ApiResponse(responseCode = "200", description = "The subscription, without its secret.")
  @GetMapping("/{id}")
  Told get(@PathVariable UUID id) {
    return told(standing(id), null);
  }

  @Operation(
      operationId = "unsubscribe",
      summary = "Have no more events sent",
      description = "What still waits to be sent there is dropped.")
  @ApiResponse(responseCode = "204", description = "It is gone.")
  @DeleteMapping("/{id}")
  ResponseEntity<Void> unsubscribe(@PathVariable UUID id) {
    if (!subscriptions.remove(id)) {
      throw missing();
    }
    return ResponseEntity.noContent().build();
  }

  @Operation(
      operationId = "listDeliveries",
      summary = "Events that have not reached a subscriber",
      description = "The oldest hundred, waiting or dead, with what came of the last try.")
  @ApiResponse(responseCode = "200", description = "The events.")
  @GetMapping("/{id}/deliveries")
  List<Delivery> deliveries(@PathVariable UUID id) {
    return outbox.of(standing(id).id(), MOST_SHOWN).stream()
        .map(SubscriptionsController::told)
        .toList();
  }

  @Operation(operationId = "retryDelivery", summary = "Try a dead event again")
  @ApiResponse(responseCode = "202", description = "It is tried again from the beginning.")
  @PostMapping("/{id}/deliveries/{delivery}/retry")
  ResponseEntity<Void> retry(@PathVariable UUID id, @PathVariable UUID delivery) {
    standing(id);
    if (outbox.find(delivery).filter(row -> row.subscription().equals(id)).isEmpty()) {
      throw new NotFoundException("The subscription has no such event that it did not take.");
    }
    if (!outbox.revive(delivery)) {
      throw new ErrorResponseException(
          HttpStatus.CONFLICT,
          ProblemDetail.forStatusAndDetail(
              HttpStatus.CONFLICT, "The event is still being tried as it is."),
          null);
    }
    return ResponseEntity.accepted().build();
  }

  private Subscription standing(UUID id) {
    return subscriptions.find(id).orElseThrow(SubscriptionsController::missing);
  }

  private static NotFoundException missing() {
    return new NotFoundException("There is no subscription with this id.");
  }

  private URI target(String text) {
    try {
      URI target = new URI(text);
      if (text.length() > LONGEST_TARGET) {
        throw new BadParameterException("target", LONGEST_TARGET + " characters are the most");
      }
      guard.check(target);
      return target;
    } catch (URISyntaxException e) {
      throw new BadParameterException("target", "it is no address");
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
                      new BadParameterException("types", "they are " + String.join(", ", known))));
    }
    if (types.isEmpty()) {
      throw new BadParameterException("types", "they are " + String.join(", ", known));
    }
    return types;
  }

  private Told told(Subscription s, @Nullable String secret) {
    return new Told(
        s.id(),
        s.target().toString(),
        s.types().stream().map(EventType::code).sorted().toList(),
        s.madeBy(),
        s.madeAt(),
        secret,
        outbox.count(s.id(), Outbox.State.WAITING),
        outbox.count(s.id(), Outbox.State.DEAD));
  }

  private static Delivery told(Outbox.Row row) {
    return new Delivery(
        row.id(),
        row.eventId(),
        row.type(),
        row.madeAt(),
        row.state(),
        row.tries(),
        row.triedAt(),
        row.said());
  }
}
