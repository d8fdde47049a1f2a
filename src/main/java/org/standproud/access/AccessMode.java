package org.standproud.access;

/** Whether callers have to show who they are. */
public enum AccessMode {
  /** Every caller is anonymous, so only this machine may call. */
  OPEN,
  /** Every caller shows a key or a token. */
  KEYS
}
