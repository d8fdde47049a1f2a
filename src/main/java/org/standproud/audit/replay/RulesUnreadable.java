package org.standproud.audit.replay;

import java.util.List;

/** Cards that were kept no longer make the rule base they made. */
public final class RulesUnreadable extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient List<String> reasons;

  RulesUnreadable(List<String> reasons) {
    super(String.join("; ", reasons));
    this.reasons = List.copyOf(reasons);
  }

  /** Everything that stands in the way, at least one. */
  public List<String> reasons() {
    return reasons;
  }
}
