package org.standproud.advice.job;

import org.standproud.advice.Quantity;
import org.standproud.advice.Wording;
import org.standproud.setup.Band;
import org.standproud.setup.units.QuantityKind;

/**
 * The size of the piece, in the caller's units.
 *
 * @param length its length
 * @param thickness between the broad sides
 * @param height between the long edges
 */
public record PieceSize(Quantity length, Quantity thickness, Quantity height) {

  static PieceSize of(Piece piece, Wording wording) {
    return new PieceSize(
        length("length", piece.lengthM(), wording),
        length("thickness", piece.thicknessM(), wording),
        length("height", piece.heightM(), wording));
  }

  private static Quantity length(String name, double lengthM, Wording wording) {
    return wording.quantity(name, QuantityKind.LENGTH, Band.exactly(lengthM));
  }
}
