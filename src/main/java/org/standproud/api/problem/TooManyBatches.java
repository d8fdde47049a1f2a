package org.standproud.api.problem;

/** As many batches are being judged as may be at a time. */
public final class TooManyBatches extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Says the limit.
   *
   * @param most how many batches are judged at a time
   */
  public TooManyBatches(int most) {
    super("At most " + most + " batches are judged at a time at each replica.");
  }
}
