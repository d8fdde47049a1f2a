package org.standproud.access;

/** Whether callers must authenticate. */
public enum AccessMode {
  /** Every caller is anonymous, so only this machine may call. */
  OPEN,
  /** Every caller sends a key or a token. */
  KEYS
}
