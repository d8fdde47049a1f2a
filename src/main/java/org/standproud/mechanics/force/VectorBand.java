package org.standproud.mechanics.force;

import java.util.List;
import org.standproud.setup.Band;

/**
 * A force on the work with its band, in the vise frame.
 *
 * @param xN along the jaws in N
 * @param yN across the stock in N, positive toward the fixed jaw
 * @param zN up in N
 */
public record VectorBand(Band xN, Band yN, Band zN) {

  static VectorBand spanning(ForceVector likely, List<ForceVector> others) {
    return new VectorBand(
        Band.spanning(likely.xN(), others.stream().mapToDouble(ForceVector::xN).toArray()),
        Band.spanning(likely.yN(), others.stream().mapToDouble(ForceVector::yN).toArray()),
        Band.spanning(likely.zN(), others.stream().mapToDouble(ForceVector::zN).toArray()));
  }
}
