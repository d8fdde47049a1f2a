package org.standproud.mechanics.published;

/** What a published value is that a test compares with. */
public enum ResultKind {
  /** Measured on a machine, a plate or a person, and compared with what is computed for it. */
  MEASURED("measured outcome"),
  /** A result that its source printed, computed anew. */
  RECOMPUTED("published result recomputed"),
  /** Computed from the formula of a source, for the test. */
  FORMULA("derived by formula"),
  /** A constant of a table, as it is stored. */
  STORED("stored constant printed back");

  private final String meaning;

  ResultKind(String meaning) {
    this.meaning = meaning;
  }

  /** What it means. */
  public String meaning() {
    return meaning;
  }
}
