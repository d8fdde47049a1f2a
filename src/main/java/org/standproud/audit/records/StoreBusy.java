package org.standproud.audit.records;

/** Too many records wait for the disk; the caller should try again later. */
public final class StoreBusy extends RecordNotStored {

  private static final long serialVersionUID = 1L;

  /** Creates the exception. */
  public StoreBusy() {
    super("Too many records wait to be stored; try again later");
  }
}
