package org.standproud.api.problem;

/** Something that cannot be done as things stand. */
public final class Conflict extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Says what stands in the way.
   *
   * @param reason what stands in the way, in sentences
   */
  public Conflict(String reason) {
    super(reason);
  }
}
