package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_DEFLECTION;
import static org.standproud.mechanics.evidence.Vocabulary.EDGE_DEFLECTION;
import static org.standproud.mechanics.evidence.Vocabulary.ROUGHNESS;
import static org.standproud.mechanics.evidence.Vocabulary.SIZE_ERROR;

import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.finish.SurfaceError;
import org.standproud.mechanics.finish.SurfaceFinish;
import org.standproud.setup.Setup;

/** What the pass leaves on the surface and in the size. */
final class FinishFacts {

  private FinishFacts() {}

  static void stateRoughness(Setup setup, FactSheet sheet) {
    SurfaceFinish finish = SurfaceFinish.of(setup, setup.cut().feedPerToothM(), null);
    sheet.number(
        ROUGHNESS,
        finish.raM(),
        Basis.on("cutter", "cut.feedPerTooth", "cut.operation").assuming(finish.assumptions()));
  }

  /** Cutter and stock spring apart; what they spring is left on. Needs both deflections first. */
  static void stateSize(FactSheet sheet) {
    sheet
        .number(CUTTER_DEFLECTION)
        .ifPresent(
            cutter ->
                sheet
                    .number(EDGE_DEFLECTION)
                    .ifPresent(
                        stock ->
                            sheet.number(
                                SIZE_ERROR,
                                SurfaceError.of(cutter.plus(stock), cutter).sizeM(),
                                sheet.basis(CUTTER_DEFLECTION).and(sheet.basis(EDGE_DEFLECTION)))));
  }
}
