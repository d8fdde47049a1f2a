package org.standproud.api.gate;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.standproud.access.AccessMode;
import org.standproud.access.Role;
import org.standproud.access.keys.KeyRing;

/**
 * Says at the start how the service is open. Where keys are wanted and no operator has one that
 * opens, it makes one and prints it on the console, once, past the log: whoever starts the service
 * is its first operator, and one who lost his key starts it again.
 */
final class AccessModeLogger {

  private static final Logger LOG = LoggerFactory.getLogger(AccessModeLogger.class);
  private static final Duration FIRST_KEY_LASTS = Duration.ofDays(7);

  private final AccessMode mode;
  private final KeyRing keys;
  private final Clock clock = Clock.systemUTC();

  AccessModeLogger(AccessMode mode, KeyRing keys, boolean tokens) {
    if (mode == AccessMode.OPEN && tokens) {
      throw UnsafeAccessException.withTokensUnread();
    }
    this.mode = mode;
    this.keys = keys;
  }

  @EventListener(ApplicationReadyEvent.class)
  void tell() {
    if (mode == AccessMode.OPEN) {
      LOG.warn(
          "Nobody is asked who he is: every caller of this machine is anonymous and may do"
              + " everything. standproud.access=keys changes that.");
    } else if (!keys.anyOpenFor(Role.OPERATOR)) {
      Instant expires = clock.instant().plus(FIRST_KEY_LASTS);
      KeyRing.Issued first =
          keys.make("first operator", Set.of(Role.OPERATOR), expires, "start of the service");
      PrintStream console = new PrintStream(System.out, true, StandardCharsets.UTF_8);
      console.println();
      console.println(
          "  Key of the first operator, shown this once, good until " + first.key().expiresAt());
      console.println("  " + first.text().text());
      console.println("  It makes keys for others: POST /v1/access/keys");
      console.println();
    }
  }
}
