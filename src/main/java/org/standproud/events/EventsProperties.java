package org.standproud.events;

import java.net.URI;
import java.time.Duration;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.standproud.settings.SettingRefused;

/**
 * Events sent to shop systems.
 *
 * @param source the source attribute of this service's CloudEvents, to distinguish several services
 * @param insideHosts hosts on this machine or in the network of the shop that events may be sent
 *     to, such as erp.shop.example or 10.1.2.3
 * @param tries most attempts for one event
 * @param firstWait the wait after the first attempt; it doubles after each
 * @param poll how often the outbox is polled
 * @param deadKept how long a dead event can still be read and retried
 */
@ConfigurationProperties("standproud.events")
record EventsProperties(
    URI source,
    @Nullable Set<String> insideHosts,
    int tries,
    Duration firstWait,
    Duration poll,
    Duration deadKept) {

  EventsProperties {
    SettingRefused.given("standproud.events.source", source, "A URI is required.");
    SettingRefused.range("standproud.events.tries", tries, 1, Integer.MAX_VALUE);
    SettingRefused.positive("standproud.events.first-wait", firstWait);
    SettingRefused.positive("standproud.events.poll", poll);
    SettingRefused.positive("standproud.events.dead-kept", deadKept);
  }

  /** The inside hosts; empty if none are configured. */
  Set<String> inside() {
    return insideHosts == null ? Set.of() : insideHosts;
  }
}
