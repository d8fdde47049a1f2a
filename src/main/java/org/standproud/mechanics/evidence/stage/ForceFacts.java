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

import java.util.function.IntToDoubleFunction;
import org.standproud.mechanics.evidence.DrawSet;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.force.DrawnPass;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.setup.JawSide;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.HoldFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.request.StockFields;

/** How hard the cut pushes the stock, and which way, over the whole pass. */
final class ForceFacts {

  private static final Basis CUT =
      Basis.on(
          StockFields.MATERIAL,
          RequestFields.CUTTER,
          CutFields.AXIAL_DEPTH,
          CutFields.OFFSET,
          CutFields.FEED_PER_TOOTH);

  /** A push up to this share of the greatest in-plane force does not count as one. */
  private static final double NEGLIGIBLE_SHARE = 0.02;

  private ForceFacts() {}

  static Basis basis(DrawnCut cut) {
    return CUT.assuming(cut.forces().assumptions());
  }

  static void state(DrawnCut cut, FactSheet sheet) {
    Basis basis = basis(cut);
    int n = cut.draws();
    IntToDoubleFunction plusX = cut.ofPass(p -> Math.max(0, p.peaks().greatestXN()));
    IntToDoubleFunction minusX = cut.ofPass(p -> Math.max(0, -p.peaks().leastXN()));
    IntToDoubleFunction toFixed = cut.ofPass(p -> Math.max(0, p.peaks().greatestYN()));
    IntToDoubleFunction toMovable = cut.ofPass(p -> Math.max(0, -p.peaks().leastYN()));
    IntToDoubleFunction either =
        draw -> Math.max(plusX.applyAsDouble(draw), minusX.applyAsDouble(draw));
    sheet.number(PEAK_TANGENTIAL_FORCE, n, cut.ofPass(DrawnPass::tangentialN), basis);
    sheet.number(PUSH_PLUS_X, n, plusX, basis);
    sheet.number(PUSH_MINUS_X, n, minusX, basis);
    sheet.number(PUSH_FIXED, n, toFixed, basis);
    sheet.number(PUSH_MOVABLE, n, toMovable, basis);
    sheet.number(LIFT_FORCE, n, cut.ofPass(p -> Math.max(0, p.peaks().greatestZN())), basis);
    sheet.number(LENGTHWISE_FORCE, n, either, basis);
    sheet.number(
        UNSTOPPED_PUSH,
        n,
        unstopped(cut, plusX, minusX, either),
        basis.and(Basis.on(HoldFields.STOP)));
    IntToDoubleFunction inPlane = cut.ofPass(DrawnPass::inPlaneN);
    sheet.yesNo(
        LENGTHWISE_BOTH_WAYS,
        DrawSet.where(
            n,
            draw ->
                Math.min(plusX.applyAsDouble(draw), minusX.applyAsDouble(draw))
                    > NEGLIGIBLE_SHARE * inPlane.applyAsDouble(draw)),
        basis);
    sheet.word(
        LOAD_JAW,
        DrawSet.where(n, draw -> toFixed.applyAsDouble(draw) >= toMovable.applyAsDouble(draw)),
        JawSide.FIXED,
        JawSide.MOVABLE,
        basis);
  }

  /** What no stop takes. */
  private static IntToDoubleFunction unstopped(
      DrawnCut cut,
      IntToDoubleFunction plusX,
      IntToDoubleFunction minusX,
      IntToDoubleFunction either) {
    return draw ->
        switch (cut.stop(draw)) {
          case NONE -> either.applyAsDouble(draw);
          case PLUS_X -> minusX.applyAsDouble(draw);
          case MINUS_X -> plusX.applyAsDouble(draw);
          case BOTH -> 0;
        };
  }
}
