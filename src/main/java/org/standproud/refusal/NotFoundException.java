package org.standproud.refusal;

/** A resource that does not exist. */
public final class NotFoundException extends Refusal {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param what in one sentence
   */
  public NotFoundException(String what) {
    super(RefusalKind.NOT_FOUND, what);
  }
}
