package org.standproud.api.gate;

import java.util.Locale;
import java.util.function.Predicate;

/**
 * The names by which a machine calls itself. A service that asks nobody who he is answers to no
 * others: a page from elsewhere may have its own name point to this machine, and would then count
 * as the same site.
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
