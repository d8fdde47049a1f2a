package org.standproud.refusal;

/** A body longer than the limit. */
public final class BodyTooLargeException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Says the limit.
   *
   * @param limitBytes most bytes in a body
   */
  public BodyTooLargeException(long limitBytes) {
    this("A body may have " + limitBytes + " bytes at most.");
  }

  /**
   * Says what is too much.
   *
   * @param what in one sentence, with the limit
   */
  public BodyTooLargeException(String what) {
    super(RefusalKind.TOO_LARGE, what);
  }
}
