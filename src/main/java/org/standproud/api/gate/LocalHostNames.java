package org.standproud.api.gate;

import java.util.Locale;
import java.util.function.Predicate;

/**
 * The Host names of this machine. A service without access control answers to no others: another
 * page could point its own name at this machine (DNS rebinding) and would then count as the same
 * site.
 */
final class LocalHostNames implements Predicate<String> {

  @Override
  public boolean test(String host) {
    String name = host.toLowerCase(Locale.ROOT);
    return name.equals("localhost")
        || name.endsWith(".localhost")
        || name.matches("127(\\.\\d{1,3}){3}")
        || name.equals("[::1]")
        || name.equals("::1");
  }
}
