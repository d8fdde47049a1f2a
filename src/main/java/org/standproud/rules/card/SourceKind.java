package org.standproud.rules.card;

import org.standproud.setup.Worded;

/** What kind of source a card stands on. */
public enum SourceKind implements Worded {
  /** A published standard. */
  STANDARD("standard"),
  /** A handbook. */
  HANDBOOK("handbook"),
  /** A paper. */
  PAPER("paper"),
  /** What is commonly done, no source. */
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
