package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.RELEASED_BOW;
import static org.standproud.mechanics.evidence.Vocabulary.ROUGHNESS;
import static org.standproud.mechanics.evidence.Vocabulary.SIZE_ERROR;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.finish.FeedMarks;
import org.standproud.mechanics.finish.LayerRemoval;
import org.standproud.mechanics.finish.SurfaceFinish;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.setup.Band;
import org.standproud.setup.Material;
import org.standproud.setup.Operation;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.request.StockFields;

/** What the pass leaves on the surface and in the size. */
final class FinishFacts {

  private FinishFacts() {}

  static void stateRoughness(Setup setup, JointSample sample, FactSheet sheet) {
    sample.check();
    SurfaceFinish finish =
        SurfaceFinish.of(setup, Band.exactly(setup.cut().feedPerToothM().likely()), null);
    sheet.number(
        ROUGHNESS,
        sample.draws(),
        draw ->
            FeedMarks.raM(
                    setup.cut().operation(),
                    setup.cutter(),
                    sample.at(Unknown.FEED, draw) * sample.at(Unknown.FEED_MARKS, draw))
                * sample.at(Unknown.ROUGHENING, draw),
        Basis.on(RequestFields.CUTTER, CutFields.FEED_PER_TOOTH, CutFields.OPERATION)
            .assuming(finish.assumptions()));
  }

  /** What the stock bows by when it is let go with this layer off. */
  static void stateRelease(Setup setup, double widthM, FactSheet sheet) {
    Stock stock = setup.stock();
    boolean side = setup.cut().operation() == Operation.BROAD_SIDE;
    Material material = stock.material();
    LayerRemoval removal =
        new LayerRemoval(
            material.youngsModulusPa().likely(),
            material.poissonsRatio(),
            side ? stock.thicknessM() : stock.heightM(),
            side);
    double removedM = side ? widthM : setup.cut().axialDepthM();
    Band stressPa =
        LayerRemoval.stressOverYield(stock.condition(), stock.surface()).times(material.yieldPa());
    sheet.number(
        RELEASED_BOW,
        stressPa.map(s -> removal.bowM(s, removedM, stock.lengthM())),
        Basis.on(RequestFields.STOCK, StockFields.CONDITION, CutFields.OPERATION)
            .assuming(List.of(LayerRemoval.stress(stock))));
  }

  /**
   * Cutter and stock spring apart across the jaws, and what they spring is left on: on a broad side
   * that is the size, on a top edge it is not.
   */
  static void stateSize(
      DrawnCut cut,
      IntToDoubleFunction stockM,
      IntToDoubleFunction cutterM,
      Basis basis,
      FactSheet sheet) {
    if (cut.setup().cut().operation() == Operation.BROAD_SIDE) {
      sheet.number(
          SIZE_ERROR,
          cut.draws(),
          draw -> stockM.applyAsDouble(draw) + cutterM.applyAsDouble(draw),
          basis);
    } else {
      sheet.number(SIZE_ERROR, 0, Basis.on(CutFields.OPERATION));
    }
  }
}
