package org.standproud.access.keys;

import java.util.regex.Pattern;

/**
 * Checks the name of a caller with a key: in records it must differ from a token's caller, whose
 * name begins with {@code token:}, and from the anonymous one.
 */
final class CallerName {

  private static final int LONGEST = 100;
  private static final Pattern SHAPE = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._@/-]*");

  private CallerName() {}

  static void check(String name) {
    if (name.length() > LONGEST || !SHAPE.matcher(name).matches()) {
      throw new IllegalArgumentException(
          "caller must be 1 to "
              + LONGEST
              + " letters, digits, spaces and . _ @ / -, beginning with a letter or digit");
    }
    if (name.equals("anonymous")) {
      throw new IllegalArgumentException(
          "caller cannot be anonymous, which is reserved for calls without a key");
    }
  }
}
