package org.standproud.refusal;

/** Too many concurrent batches. */
public final class TooManyBatchesException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param most most concurrent batches
   */
  public TooManyBatchesException(int most) {
    super(
        RefusalKind.TOO_MANY_BATCHES,
        "At most " + most + " batches run at a time at each replica.");
  }
}
