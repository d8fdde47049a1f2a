package org.standproud.api.problem;

/** As many callers read records whole as may at a time. */
public final class TooManyExports extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Says the limit.
   *
   * @param most how many there may be at a time
   */
  public TooManyExports(int most) {
    super("At most " + most + " exports and checks of the chain run at a time at each replica.");
  }
}
