package org.standproud.refusal;

/** Something asked for by name that is not there. */
public final class NotFoundException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Says what is not there.
   *
   * @param what in one sentence
   */
  public NotFoundException(String what) {
    super(RefusalKind.NOT_FOUND, what);
  }
}
