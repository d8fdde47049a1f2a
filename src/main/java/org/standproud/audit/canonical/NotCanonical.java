package org.standproud.audit.canonical;

/** A value that RFC 8785 cannot hold unchanged, or a text that is no JSON. */
public final class NotCanonical extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * Says what stood in the way.
   *
   * @param reason what was found
   */
  public NotCanonical(String reason) {
    super(reason);
  }
}
