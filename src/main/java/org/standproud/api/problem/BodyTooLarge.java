package org.standproud.api.problem;

/** A body longer than the limit. */
public final class BodyTooLarge extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Says the limit.
   *
   * @param limitBytes most bytes in a body
   */
  public BodyTooLarge(long limitBytes) {
    this("A body may have " + limitBytes + " bytes at most.");
  }

  /**
   * Says what is too much.
   *
   * @param what in one sentence, with the limit
   */
  public BodyTooLarge(String what) {
    super(what);
  }
}
