package org.standproud.web.cards;

import java.security.Principal;
import org.standproud.access.Caller;

/** Who brings cards to the desk: who is signed in, or who says so where nobody has to sign in. */
final class Author {

  private Author() {}

  /** Whether the service knows him, so that he need not and cannot say who he is. */
  static boolean known(Principal caller) {
    return !caller.getName().equals(Caller.ANONYMOUS.name());
  }

  /**
   * His name.
   *
   * @param caller who is signed in
   * @param told who he says he is
   */
  static String of(Principal caller, String told) {
    return known(caller) ? caller.getName() : told.strip();
  }
}
