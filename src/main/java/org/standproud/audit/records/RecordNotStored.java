package org.standproud.audit.records;

import org.jspecify.annotations.Nullable;

/** A record could not be put on disk; an answer that rests on it must not be sent. */
public class RecordNotStored extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Says why.
   *
   * @param reason what stood in the way
   */
  public RecordNotStored(String reason) {
    super(reason);
  }

  /**
   * Says why, with what the database said.
   *
   * @param reason what stood in the way
   * @param cause what was thrown
   */
  public RecordNotStored(String reason, @Nullable Throwable cause) {
    super(reason, cause);
  }
}
