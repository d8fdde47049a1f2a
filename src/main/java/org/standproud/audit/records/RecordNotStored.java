package org.standproud.audit.records;

import org.jspecify.annotations.Nullable;

/** A record could not be stored; an answer that depends on it must not be sent. */
public class RecordNotStored extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Creates the exception.
   *
   * @param reason the reason
   */
  public RecordNotStored(String reason) {
    super(reason);
  }

  /**
   * Creates the exception with its cause.
   *
   * @param reason the reason
   * @param cause the cause
   */
  public RecordNotStored(String reason, @Nullable Throwable cause) {
    super(reason, cause);
  }
}
