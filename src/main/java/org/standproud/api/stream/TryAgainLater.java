package org.standproud.api.stream;

/** The fault is not the message's: nothing of the group is given out, and all of it comes again. */
final class TryAgainLater extends RuntimeException {

  private static final long serialVersionUID = 1L;

  TryAgainLater(Exception cause) {
    super("A set-up from the topic could not be judged now", cause);
  }
}
