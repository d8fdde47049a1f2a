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
 * Logs at start how access is controlled. If keys are required and no operator has a valid one, it
 * creates one and prints it once on the console, not in the log: the person who starts the service
 * is its first operator, and restarts it to replace a lost key.
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
  void log() {
    if (mode == AccessMode.OPEN) {
      LOG.warn(
          "Access control is off: every caller of this machine is anonymous and may do"
              + " everything. standproud.access=keys changes that.");
    } else if (!keys.anyOpenFor(Role.OPERATOR)) {
      Instant expires = clock.instant().plus(FIRST_KEY_LASTS);
      KeyRing.Issued first =
          keys.make("first operator", Set.of(Role.OPERATOR), expires, "start of the service");
      PrintStream console = new PrintStream(System.out, true, StandardCharsets.UTF_8);
      console.println();
      console.println(
          "  Key of the first operator, shown only once, valid until " + first.key().expiresAt());
      console.println("  " + first.text().text());
      console.println("  It creates keys for others: POST /v1/access/keys");
      console.println();
    }
  }
}
