package org.standproud.api.assessing;

/** No assessment can be made, because there is no catalogue or no rule base in service. */
public final class NotReady extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Says what is lacking.
   *
   * @param reason what is lacking
   */
  public NotReady(String reason) {
    super(reason);
  }
}
