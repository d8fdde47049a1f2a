package org.standproud.events;

import java.net.URI;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;

/**
 * A webhook subscription.
 *
 * @param id its id
 * @param target where events are sent
 * @param types types of the events
 * @param secret signs the events
 * @param madeBy its creator
 * @param madeAt time of creation
 */
public record Subscription(
    UUID id,
    URI target,
    Set<EventType> types,
    WebhookSecret secret,
    String madeBy,
    Instant madeAt) {

  public Subscription {
    types = Set.copyOf(types);
  }
}
