package org.standproud.assessment.stream;

/**
 * A failure outside the message: nothing of the group is committed, and all of it is delivered
 * again.
 */
final class RetryGroupException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  RetryGroupException(Exception cause) {
    super("A set-up from the topic could not be judged now", cause);
  }
}
