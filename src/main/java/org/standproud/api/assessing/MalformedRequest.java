package org.standproud.api.assessing;

import org.standproud.setup.reading.RequestText;

/** A request that is not JSON. */
public final class MalformedRequest extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final int line;
  private final int column;

  /**
   * Says why and where.
   *
   * @param cause what reading found
   */
  public MalformedRequest(RequestText.Malformed cause) {
    super(cause.getMessage(), cause);
    this.line = cause.line();
    this.column = cause.column();
  }

  /**
   * Says why.
   *
   * @param reason why it is no JSON at all
   */
  public MalformedRequest(String reason) {
    super(reason);
    this.line = -1;
    this.column = -1;
  }

  /** Line where reading stopped, from 1; negative if that cannot be told. */
  public int line() {
    return line;
  }

  /** Column where reading stopped, from 1; negative if that cannot be told. */
  public int column() {
    return column;
  }
}
