package org.standproud.setup;

/** What the underside of the stock sits on. */
public enum Seat implements Worded {
  /** Parallels that were checked to be tight. */
  PARALLELS("parallels"),
  /** The bed of the vise. */
  BED("bed"),
  /** Nothing: the jaws alone carry it. */
  NONE("none");

  private final String words;

  Seat(String words) {
    this.words = words;
  }

  /** Whether something under the stock takes a push downward. */
  public boolean carries() {
    return this != NONE;
  }

  @Override
  public String words() {
    return words;
  }
}
