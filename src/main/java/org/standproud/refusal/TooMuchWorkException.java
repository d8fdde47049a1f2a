package org.standproud.refusal;

/** As many callers have something long worked out, or wait for it, as may at a time. */
public final class TooMuchWorkException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Names the limit.
   *
   * @param most how many may be worked out at a time
   */
  public TooMuchWorkException(int most) {
    super(
        RefusalKind.TOO_MUCH_WORK,
        "At most " + most + " such calls are worked out at a time at each replica.");
  }
}
