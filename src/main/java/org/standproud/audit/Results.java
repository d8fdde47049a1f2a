package org.standproud.audit;

import org.standproud.audit.canonical.CanonicalJson;

/** What was computed and judged, as the record keeps it. */
public sealed interface Results {

  /**
   * Values, and the outcome of each card: what only the program of then could compute again. The
   * rest follows from the set-up and the cards.
   *
   * @param text the values of the facts and the outcome of every card
   */
  record Short(CanonicalJson text) implements Results {}

  /**
   * Every word of the evidence and of the trace, as records had them before version 0.5.
   *
   * @param evidence every fact with its formula, inputs and assumptions
   * @param trace every card, fired or not, with its conditions
   */
  record Full(CanonicalJson evidence, CanonicalJson trace) implements Results {}
}
