package org.standproud.refusal;

/** Too many concurrent long computations, or callers waiting for one. */
public final class TooMuchWorkException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param most most concurrent computations
   */
  public TooMuchWorkException(int most) {
    super(
        RefusalKind.TOO_MUCH_WORK,
        "At most " + most + " such computations run at a time at each replica.");
  }
}
