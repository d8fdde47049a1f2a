package org.standproud.rules.card;

import org.standproud.setup.Worded;

/** The kind of source of a card. */
public enum SourceKind implements Worded {
  /** A published standard. */
  STANDARD("standard"),
  /** A handbook. */
  HANDBOOK("handbook"),
  /** A paper. */
  PAPER("paper"),
  /** Common practice, no source. */
  COMMON_PRACTICE("common practice"),
  /** The experience of this shop. */
  SHOP("shop");

  private final String words;

  SourceKind(String words) {
    this.words = words;
  }

  @Override
  public String words() {
    return words;
  }
}
