package org.standproud.refusal;

/** As many batches are being judged as may be at a time. */
public final class TooManyBatchesException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Says the limit.
   *
   * @param most how many batches are judged at a time
   */
  public TooManyBatchesException(int most) {
    super(
        RefusalKind.TOO_MANY_BATCHES,
        "At most " + most + " batches are judged at a time at each replica.");
  }
}
