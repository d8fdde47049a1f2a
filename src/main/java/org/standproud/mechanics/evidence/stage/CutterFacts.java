package org.standproud.mechanics.evidence.stage;

import static org.standproud.mechanics.evidence.Vocabulary.CHIP_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_DEFLECTION;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_SLENDERNESS;
import static org.standproud.mechanics.evidence.Vocabulary.CUTTER_STRENGTH_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.FEED_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.POWER_MARGIN;
import static org.standproud.mechanics.evidence.Vocabulary.SPEED_AVAILABLE;
import static org.standproud.mechanics.evidence.Vocabulary.SPEED_RATIO;
import static org.standproud.mechanics.evidence.Vocabulary.TORQUE_MARGIN;

import java.util.function.IntToDoubleFunction;
import org.standproud.mechanics.cutter.CutterStanding;
import org.standproud.mechanics.cutter.DrawnCutter;
import org.standproud.mechanics.evidence.stage.FactSheet.Basis;
import org.standproud.mechanics.force.DrawnPass;
import org.standproud.mechanics.holding.slip.Margin;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.mechanics.spindle.PowerCurve;
import org.standproud.mechanics.spindle.SpindleLoad;
import org.standproud.setup.Band;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.Setup;
import org.standproud.setup.request.CutFields;
import org.standproud.setup.request.RequestFields;
import org.standproud.setup.request.StockFields;

/** How the cutter stands the pass, and whether the spindle drives it. */
final class CutterFacts {

  private CutterFacts() {}

  static void stateCutter(DrawnCut cut, double greatestChipPerFeed, FactSheet sheet) {
    Setup setup = cut.setup();
    JointSample sample = cut.sample();
    DrawnCutter cutter = DrawnCutter.of(setup.cutter());
    Basis basis =
        ForceFacts.basis(cut)
            .and(Basis.on(RequestFields.MACHINE))
            .assuming(CutterStanding.assumptions(setup.cutter()));
    int n = cut.draws();
    IntToDoubleFunction peakN = cut.ofPass(DrawnPass::inPlaneN);
    sheet.number(CUTTER_DEFLECTION, n, deflectionM(cut, cutter), basis);
    sheet.number(
        CUTTER_STRENGTH_MARGIN,
        n,
        draw ->
            Margin.of(
                sample.at(Unknown.TOOL_STRENGTH, draw),
                peakN.applyAsDouble(draw) * cutter.stressPaPerN()),
        basis);
    sheet.number(CUTTER_SLENDERNESS, cutter.overhangRatio(), Basis.on(RequestFields.CUTTER));
    CuttingRange range = setup.stock().material().rangeFor(setup.cutter().toolMaterial());
    double speed = Math.PI * setup.cutter().diameterM() * setup.cut().spindleSpeedRevPerS();
    Basis published = Basis.on(StockFields.MATERIAL, RequestFields.CUTTER, CutFields.SPINDLE);
    sheet.number(SPEED_RATIO, speed / range.greatestSpeedMPerS(), published);
    sheet.number(
        FEED_RATIO,
        n,
        draw -> sample.at(Unknown.FEED, draw) / range.greatestFeedPerToothM(),
        published.and(Basis.on(CutFields.FEED_PER_TOOTH)));
    sheet.number(
        CHIP_MARGIN,
        n,
        draw ->
            greatestChipPerFeed
                * sample.at(Unknown.FEED, draw)
                / (sample.at(Unknown.LEAST_CHIP, draw)
                    * sample.at(Unknown.EDGE_ROUNDING, draw)
                    * setup.cutter().edgeRadiusM()),
        basis);
  }

  /** Deflection of the cutting end in each draw in m. */
  static IntToDoubleFunction deflectionM(DrawnCut cut, DrawnCutter cutter) {
    JointSample sample = cut.sample();
    IntToDoubleFunction peakN = cut.ofPass(DrawnPass::inPlaneN);
    return draw ->
        peakN.applyAsDouble(draw)
            * cutter.complianceMPerN(
                sample.at(Unknown.TOOL_MODULUS, draw),
                sample.at(Unknown.SPINDLE, draw),
                sample.at(Unknown.SPINDLE_PIVOT, draw));
  }

  static void stateSpindle(DrawnCut cut, FactSheet sheet) {
    Setup setup = cut.setup();
    JointSample sample = cut.sample();
    double revPerS = setup.cut().spindleSpeedRevPerS();
    SpindleLoad load = SpindleLoad.of(setup.machine(), revPerS, Band.exactly(0));
    double motorW = new PowerCurve(setup.machine().power()).powerW(revPerS);
    double radiusM = setup.cutter().diameterM() / 2;
    double speedMPerS = 2 * Math.PI * radiusM * revPerS;
    Basis basis = ForceFacts.basis(cut).and(Basis.on(RequestFields.MACHINE, CutFields.SPINDLE));
    sheet.yesNo(
        SPEED_AVAILABLE, load.speedInRange(), Basis.on(RequestFields.MACHINE, CutFields.SPINDLE));
    IntToDoubleFunction meanN = cut.ofPass(DrawnPass::meanTangentialN);
    sheet.number(
        POWER_MARGIN,
        cut.draws(),
        draw ->
            Margin.of(
                motorW * sample.at(Unknown.EFFICIENCY, draw),
                meanN.applyAsDouble(draw) * speedMPerS),
        basis);
    IntToDoubleFunction peakN = cut.ofPass(DrawnPass::tangentialN);
    sheet.number(
        TORQUE_MARGIN,
        cut.draws(),
        draw ->
            Margin.of(
                motorW * sample.at(Unknown.EFFICIENCY, draw) / (2 * Math.PI * revPerS),
                peakN.applyAsDouble(draw) * radiusM),
        basis);
  }
}
