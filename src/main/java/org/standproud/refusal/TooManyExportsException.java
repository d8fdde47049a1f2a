package org.standproud.refusal;

/** Too many concurrent exports and chain checks. */
public final class TooManyExportsException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param most most concurrent exports
   */
  public TooManyExportsException(int most) {
    super(
        RefusalKind.TOO_MANY_EXPORTS,
        "At most " + most + " exports and checks of the chain run at a time at each replica.");
  }
}
