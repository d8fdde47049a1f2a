package org.standproud.advice.compare;

import org.standproud.setup.Worded;

/** What became of a finding, worst first. */
public enum Move implements Worded {
  /** It was not there before. */
  NEW("new"),
  /** It is graver. */
  GRAVER("graver"),
  /** It is as it was. */
  STAYS("stays"),
  /** It is less grave. */
  EASED("eased"),
  /** It is gone. */
  GONE("gone");

  private final String words;

  Move(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
