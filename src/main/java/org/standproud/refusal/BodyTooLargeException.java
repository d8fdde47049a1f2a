package org.standproud.refusal;

/** A body longer than the limit. */
public final class BodyTooLargeException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param limitBytes most bytes in a body
   */
  public BodyTooLargeException(long limitBytes) {
    this("A body may have " + limitBytes + " bytes at most.");
  }

  /**
   * Creates the exception with another detail.
   *
   * @param what one sentence with the limit
   */
  public BodyTooLargeException(String what) {
    super(RefusalKind.TOO_LARGE, what);
  }
}
