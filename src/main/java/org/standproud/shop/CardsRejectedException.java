package org.standproud.shop;

import java.util.List;
import java.util.Map;
import org.standproud.refusal.Refusal;
import org.standproud.refusal.RefusalKind;
import org.standproud.rules.card.CardError;

/** Cards that the gate refused. */
public final class CardsRejectedException extends Refusal {

  private static final long serialVersionUID = 1L;

  private final transient List<CardError> errors;

  /**
   * Creates the exception.
   *
   * @param errors the errors by file, line and column
   */
  public CardsRejectedException(List<CardError> errors) {
    super(
        RefusalKind.CARDS_REFUSED,
        errors.size() + " errors in the cards; the first: " + errors.get(0),
        Map.of("errors", List.copyOf(errors)));
    this.errors = List.copyOf(errors);
  }

  /** The errors by file, line and column. */
  public List<CardError> errors() {
    return errors;
  }
}
