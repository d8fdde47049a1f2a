package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.LENGTHWISE_BOTH_WAYS;
import static org.standproud.mechanics.evidence.Vocabulary.LENGTHWISE_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.LIFT_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.LOAD_JAW;
import static org.standproud.mechanics.evidence.Vocabulary.PEAK_TANGENTIAL_FORCE;
import static org.standproud.mechanics.evidence.Vocabulary.PUSH_FIXED;
import static org.standproud.mechanics.evidence.Vocabulary.PUSH_MINUS_X;
import static org.standproud.mechanics.evidence.Vocabulary.PUSH_MOVABLE;
import static org.standproud.mechanics.evidence.Vocabulary.PUSH_PLUS_X;
import static org.standproud.mechanics.evidence.Vocabulary.UNSTOPPED_PUSH;

import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.direction.Occurrence;
import org.standproud.mechanics.direction.Pushes;
import org.standproud.mechanics.direction.Way;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.force.PassForces;
import org.standproud.setup.Band;
import org.standproud.setup.JawSide;
import org.standproud.setup.Setup;
import org.standproud.setup.Stop;

/** How hard the cut pushes the stock, and which way, over the whole pass. */
final class ForceFacts {

  private static final Basis CUT =
      Basis.on("stock.material", "cutter", "cut.axialDepth", "cut.offset", "cut.feedPerTooth");

  private ForceFacts() {}

  static Basis basis(PassForces forces) {
    return CUT.assuming(forces.assumptions());
  }

  static void state(Pushes pushes, PassForces forces, Setup setup, FactSheet sheet) {
    Basis basis = basis(forces);
    Band plusX = pushes.peakN(Way.LENGTHWISE_PLUS);
    Band minusX = pushes.peakN(Way.LENGTHWISE_MINUS);
    Band toFixed = pushes.peakN(Way.TOWARD_FIXED_JAW);
    Band toMovable = pushes.peakN(Way.TOWARD_MOVABLE_JAW);
    sheet.number(PEAK_TANGENTIAL_FORCE, forces.steady().greatestTangentialN(), basis);
    sheet.number(PUSH_PLUS_X, plusX, basis);
    sheet.number(PUSH_MINUS_X, minusX, basis);
    sheet.number(PUSH_FIXED, toFixed, basis);
    sheet.number(PUSH_MOVABLE, toMovable, basis);
    sheet.number(LIFT_FORCE, pushes.peakN(Way.UP), basis);
    sheet.number(LENGTHWISE_FORCE, greater(plusX, minusX), basis);
    sheet.number(
        UNSTOPPED_PUSH,
        unstopped(setup.hold().stop(), plusX, minusX),
        basis.and(Basis.on("hold.stop")));
    boolean bothWays =
        pushes.occurs(Way.LENGTHWISE_PLUS) != Occurrence.NO
            && pushes.occurs(Way.LENGTHWISE_MINUS) != Occurrence.NO;
    sheet.yesNo(LENGTHWISE_BOTH_WAYS, bothWays, basis);
    sheet.word(
        LOAD_JAW, toFixed.likely() >= toMovable.likely() ? JawSide.FIXED : JawSide.MOVABLE, basis);
  }

  /** A stop that nobody mentioned may or may not be there: the band then starts at nothing. */
  private static Band unstopped(@Nullable Stop stop, Band plusX, Band minusX) {
    Band either = greater(plusX, minusX);
    if (stop == null) {
      return new Band(0, either.likely(), either.high());
    }
    return switch (stop) {
      case NONE -> either;
      case PLUS_X -> minusX;
      case MINUS_X -> plusX;
      case BOTH -> Band.exactly(0);
    };
  }

  private static Band greater(Band a, Band b) {
    return new Band(
        Math.max(a.low(), b.low()), Math.max(a.likely(), b.likely()), Math.max(a.high(), b.high()));
  }
}
