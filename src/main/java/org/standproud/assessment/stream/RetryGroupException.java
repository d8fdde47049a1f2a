package org.standproud.assessment.stream;

/** The fault is not the message's: nothing of the group is given out, and all of it comes again. */
final class RetryGroupException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  RetryGroupException(Exception cause) {
    super("A set-up from the topic could not be judged now", cause);
  }
}
