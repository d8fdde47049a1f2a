package org.standproud.rules.beside;

import org.standproud.rules.language.Truth;

/** One card written in Java. */
public interface HandCard {
  /** Whether it is about this set-up. */
  Truth applies(Case f);

  /** Scope and conditions together. */
  Truth truth(Case f);

  /** Truth of each condition and how far each is from flipping. */
  HandTrace trace(Case f);
}
