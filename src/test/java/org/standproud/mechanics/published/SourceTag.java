package org.standproud.mechanics.published;

/** How surely a published value is known to be what its source says. */
public enum SourceTag {
  /** Read in a copy of the source. */
  FOUND("found", "read in a copy of the source"),
  /** Recalled from the source, not read again. */
  MEMORY("memory", "recalled from the source, not read again"),
  /** Computed from the printed formula of the source. */
  DERIVED("derived", "computed from the printed formula of the source");

  private final String word;
  private final String meaning;

  SourceTag(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  /** The word used on the page. */
  public String word() {
    return word;
  }

  /** What it means. */
  public String meaning() {
    return meaning;
  }
}
