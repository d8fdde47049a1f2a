package org.standproud.setup;

/**
 * A whole proposed set-up, checked and in SI units. What the caller does not know is null, never a
 * default; mechanics puts a stated band in its place.
 *
 * @param job what it is for
 * @param stock the piece
 * @param hold how it is held
 * @param machine the machine
 * @param cutter the cutter
 * @param cut the pass
 * @param units the caller's units, for the answer
 */
public record Setup(
    JobReference job,
    Stock stock,
    Hold hold,
    Machine machine,
    Cutter cutter,
    Cut cut,
    UnitSystem units) {

  /** Height of stock above the jaws in m. */
  public double stickOutM() {
    return stock.heightM() - hold.gripDepthM();
  }
}
