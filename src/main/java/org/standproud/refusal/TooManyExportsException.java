package org.standproud.refusal;

/** As many callers read records whole as may at a time. */
public final class TooManyExportsException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Says the limit.
   *
   * @param most how many there may be at a time
   */
  public TooManyExportsException(int most) {
    super(
        RefusalKind.TOO_MANY_EXPORTS,
        "At most " + most + " exports and checks of the chain run at a time at each replica.");
  }
}
