package org.standproud.audit.records;

/** More records wait for the disk than may wait; the caller should try again later. */
public final class StoreBusy extends RecordNotStored {

  private static final long serialVersionUID = 1L;

  /** Says that the line is full. */
  public StoreBusy() {
    super("Too many records wait to be stored; try again later");
  }
}
