package org.standproud.refusal;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A fault that is safe to log. An exception's message can repeat caller input, and a line break in
 * it would forge a log line; so control characters are written as escapes. The stack trace is kept.
 */
public final class LoggedFault extends Exception {

  private static final long serialVersionUID = 1L;

  private LoggedFault(Throwable fault, @Nullable Throwable cause) {
    super(fault.getClass().getName() + ": " + escaped(String.valueOf(fault.getMessage())), cause);
    setStackTrace(fault.getStackTrace());
  }

  /**
   * The fault itself if its messages have no control characters, else a copy.
   *
   * @param fault the exception
   */
  public static Throwable of(Throwable fault) {
    return isPlain(fault) ? fault : copy(fault, Collections.newSetFromMap(new IdentityHashMap<>()));
  }

  private static Throwable copy(Throwable fault, Set<Throwable> seen) {
    seen.add(fault);
    Throwable cause = fault.getCause();
    return new LoggedFault(fault, cause == null || seen.contains(cause) ? null : copy(cause, seen));
  }

  private static boolean isPlain(Throwable fault) {
    Set<Throwable> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Throwable at = fault; at != null && seen.add(at); at = at.getCause()) {
      String message = at.getMessage();
      if (message != null && !message.equals(escaped(message))) {
        return false;
      }
    }
    return true;
  }

  /**
   * The text on one line: control characters and other line ends are escaped.
   *
   * @param text any text
   */
  public static String escaped(String text) {
    StringBuilder line = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              int type = Character.getType(c);
              boolean breaks =
                  type == Character.CONTROL
                      || type == Character.FORMAT
                      || type == Character.LINE_SEPARATOR
                      || type == Character.PARAGRAPH_SEPARATOR;
              if (breaks) {
                line.append(String.format(Locale.ROOT, "\\u%04x", c));
              } else {
                line.appendCodePoint(c);
              }
            });
    return line.toString();
  }
}
