package org.standproud.setup;

/** What is on the faces that grip and are gripped. */
public enum JawFaces implements Worded {
  /** Degreased: no oil or coolant. */
  DRY("dry"),
  /** Wiped with a rag; a film is left. */
  WIPED("wiped"),
  /** Oil or coolant on them. */
  OILY("oily");

  private final String words;

  JawFaces(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
