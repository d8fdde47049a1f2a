package org.standproud.setup.request;

/** Two lengths, speeds or counts of which one may not be greater than the other. */
final class OrderCheck {

  private OrderCheck() {}

  /** Reports a first that is greater than the second, if both were read. */
  static <O> void check(
      Values values, Quantity<O> notGreater, Quantity<O> thanThis, FieldLocation place) {
    Double first = values.get(notGreater);
    Double second = values.get(thanThis);
    if (first != null && second != null && first > second) {
      exceeds(first, notGreater, second, thanThis.name(), place.child(notGreater.name()));
    }
  }

  /**
   * Reports a quantity that is greater than it can be.
   *
   * @param value what was given, in SI
   * @param field its field, for the unit
   * @param limit what it may not exceed, in SI
   * @param limitName what sets the limit
   * @param place where it stands
   */
  static void exceeds(
      double value, Quantity<?> field, double limit, String limitName, FieldLocation place) {
    var unit = field.range().kind().unit(place.units());
    place
        .faults()
        .add(
            new Problem(
                place.pointer(),
                MessageText.of(unit.fromSi(value)),
                field.name() + " cannot be greater than " + limitName,
                "at most " + MessageText.of(unit.fromSi(limit)),
                unit.code(),
                null));
  }
}
