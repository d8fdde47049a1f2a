package org.standproud.web.cards;

import java.security.Principal;
import org.standproud.access.Caller;

/** The author of a change: the signed-in caller, or without access control the name typed. */
final class Author {

  private Author() {}

  /** Whether the caller is signed in, so that no name is asked for. */
  static boolean known(Principal caller) {
    return !caller.getName().equals(Caller.ANONYMOUS.name());
  }

  /**
   * The name of the author.
   *
   * @param caller the caller
   * @param typed the name typed in the form
   */
  static String of(Principal caller, String typed) {
    return known(caller) ? caller.getName() : typed.strip();
  }
}
