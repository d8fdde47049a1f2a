package org.standproud.mechanics.evidence;

import org.standproud.setup.Worded;

/** One of the two that meet in the cut and give. */
public enum CutMember implements Worded {
  /** Cutter, holder and spindle. */
  CUTTER("cutter"),
  /** The stock that stands in its vise. */
  PLATE("plate");

  private final String words;

  CutMember(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
