package org.standproud.audit.replay;

/** A record that cannot be judged again. */
public final class NotReplayable extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param reason in one sentence
   */
  public NotReplayable(String reason) {
    super(reason);
  }
}
