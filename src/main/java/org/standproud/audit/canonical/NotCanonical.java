package org.standproud.audit.canonical;

/** A value that RFC 8785 cannot represent exactly, or text that is not JSON. */
public final class NotCanonical extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param reason the reason
   */
  public NotCanonical(String reason) {
    super(reason);
  }
}
