package org.standproud.api.gate;

/** Whether callers have to say who they are. */
enum AccessMode {
  /** Nobody is asked, so only this machine may call. */
  OPEN,
  /** Every caller shows a key or a token. */
  KEYS
}
