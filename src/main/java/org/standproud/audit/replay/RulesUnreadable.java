package org.standproud.audit.replay;

import java.util.List;

/** Stored cards that no longer build the same rule base. */
public final class RulesUnreadable extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<String> reasons;

  RulesUnreadable(List<String> reasons) {
    super(String.join("; ", reasons));
    this.reasons = List.copyOf(reasons);
  }

  /** Every reason, at least one. */
  public List<String> reasons() {
    return reasons;
  }
}
