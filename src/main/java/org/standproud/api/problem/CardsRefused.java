package org.standproud.api.problem;

import java.util.List;
import org.standproud.rules.card.CardError;

/** Cards that the gate refused. */
public final class CardsRefused extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<CardError> errors;

  /**
   * Says what is wrong.
   *
   * @param errors by file, line and column
   */
  public CardsRefused(List<CardError> errors) {
    super(errors.size() + " things are wrong with the cards; the first: " + errors.get(0));
    this.errors = List.copyOf(errors);
  }

  /** What is wrong, by file, line and column. */
  public List<CardError> errors() {
    return errors;
  }
}
