package org.standproud.mechanics.force;

import java.util.List;
import org.standproud.mechanics.Assumption;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;

/**
 * What the cutting force of a pass depends on.
 *
 * @param stock the piece
 * @param cutter the cutter
 * @param cut the pass
 * @param model the force law, corrections included
 * @param assumptions what the law assumed
 */
public record ForceInput(
    Stock stock, Cutter cutter, Cut cut, ForceModel model, List<Assumption> assumptions) {

  /** Copies the list. */
  public ForceInput {
    assumptions = List.copyOf(assumptions);
  }

  /** The pass of a set-up under the law its material names. */
  public static ForceInput from(Setup setup) {
    return of(setup.stock(), setup.cutter(), setup.cut());
  }

  /**
   * A pass under the law its material names, with its corrections.
   *
   * @param stock the piece
   * @param cutter the cutter
   * @param cut the pass
   */
  public static ForceInput of(Stock stock, Cutter cutter, Cut cut) {
    CorrectedKienzle law = CorrectedKienzle.of(stock.material(), cutter);
    return PublishedCoefficients.of(stock.material().forceLaw())
        .map(set -> PublishedForce.of(set, stock.material(), cutter, law))
        .map(set -> new ForceInput(stock, cutter, cut, set.model(), set.assumptions()))
        .orElseGet(() -> new ForceInput(stock, cutter, cut, law.model(), law.assumptions()));
  }

  /** The same pass under another law. */
  public ForceInput with(ForceModel other) {
    return new ForceInput(stock, cutter, cut, other, List.of());
  }
}
