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
 * @param source the source of the CloudEvents of this service, where events of several come
 *     together
 * @param insideHosts hosts inside this machine or the network of the shop that events may be sent
 *     to, such as erp.shop.example or 10.1.2.3; a target elsewhere is never inside
 * @param tries most tries of one event
 * @param firstWait the wait after the first try; twice as long after each
 * @param poll how often the outbox is read
 * @param deadKept how long an event that was given up can still be read and tried again
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
    SettingRefused.given("standproud.events.source", source, "A URI has to be given.");
    SettingRefused.range("standproud.events.tries", tries, 1, Integer.MAX_VALUE);
    SettingRefused.positive("standproud.events.first-wait", firstWait);
    SettingRefused.positive("standproud.events.poll", poll);
    SettingRefused.positive("standproud.events.dead-kept", deadKept);
  }

  /** The hosts inside; none where none are named. */
  Set<String> inside() {
    return insideHosts == null ? Set.of() : insideHosts;
  }
}
