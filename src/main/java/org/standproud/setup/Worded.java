package org.standproud.setup;

/** A choice that is written in requests, rule cards and answers as plain words. */
public interface Worded {

  /** The words that stand for this choice, in lower case. */
  String words();
}
