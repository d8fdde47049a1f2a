package org.standproud.api.problem;

/** Something asked for by name that is not there. */
public final class NotThere extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Says what is not there.
   *
   * @param what in one sentence
   */
  public NotThere(String what) {
    super(what);
  }
}
