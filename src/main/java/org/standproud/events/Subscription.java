package org.standproud.events;

import java.net.URI;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;

/**
 * Who is told of what.
 *
 * @param id its id
 * @param target where events are sent to
 * @param types what is sent there
 * @param secret signs what is sent there
 * @param madeBy who asked for it
 * @param madeAt when
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
