package org.standproud.mechanics.published;

/**
 * One published number beside the computed one.
 *
 * @param table where it is from
 * @param row the case it belongs to
 * @param quantity what it is
 * @param unit its unit, empty for a pure number
 * @param published as printed
 * @param computed by the package
 * @param tolerance greatest difference allowed, in the same unit
 */
public record Figure(
    PublishedTable table,
    String row,
    String quantity,
    String unit,
    double published,
    double computed,
    double tolerance) {

  /** Computed less published. */
  public double difference() {
    return computed - published;
  }
}
