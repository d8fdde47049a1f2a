package org.standproud.advice.workholding;

import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.standproud.advice.whatif.CutterSwap;
import org.standproud.advice.whatif.SetupEditor;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.Cutter;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.Operation;
import org.standproud.setup.PlannedCut;
import org.standproud.setup.Setup;
import org.standproud.setup.Stock;
import org.standproud.setup.catalogue.Catalogue;

/**
 * The same job with the plate on its broad side. The former top edge is milled by the periphery of
 * a square cutter, over the whole thickness at once and as wide as it was deep; the former broad
 * side faces up and is milled with the end of the cutter, in strips of three quarters of its
 * diameter.
 *
 * @param setup the pass on the plate as it lies: its height is the thickness of the plate
 * @param strips passes side by side
 */
record LaidFlat(Setup setup, int strips) {

  private static final double STRIP_OVER_DIAMETER = 0.75;

  /** The job laid flat; empty if the shop has no cutter for it. */
  static Optional<LaidFlat> of(Setup standing, Catalogue shop) {
    return standing.cut().operation() == Operation.TOP_EDGE
        ? edge(standing, shop)
        : Optional.of(face(standing));
  }

  private static Optional<LaidFlat> edge(Setup s, Catalogue shop) {
    double deepM = s.stock().thicknessM();
    return Stream.concat(Stream.of(s.cutter()), shop.cutters().values().stream())
        .filter(c -> reaches(c, deepM))
        .min(
            Comparator.comparing((Cutter c) -> c != s.cutter())
                .thenComparing(c -> c.edge() != EdgeCondition.FRESH)
                .thenComparing(c -> c.stickOutM() / c.diameterM())
                .thenComparing(Cutter::name))
        .map(c -> new LaidFlat(edgeWith(s, c), 1));
  }

  private static boolean reaches(Cutter c, double deepM) {
    return c.greatestDepthM() >= deepM
        && c.enteringAngleRad() > Math.toRadians(89)
        && c.missingTeeth().isEmpty()
        && c.chippedTeeth().isEmpty();
  }

  private static Setup edgeWith(Setup s, Cutter cutter) {
    double wideM = s.cut().axialDepthM();
    Setup with = cutter == s.cutter() ? s : CutterSwap.with(s, cutter);
    Setup flat = turned(with, Operation.BROAD_SIDE, s.stock().thicknessM(), 1);
    return CutterSwap.withSideDepth(flat, wideM);
  }

  private static LaidFlat face(Setup s) {
    double stripM = STRIP_OVER_DIAMETER * s.cutter().diameterM();
    double wholeM = s.cut().axialDepthM();
    int strips = (int) Math.ceil(wholeM / stripM - 1e-9);
    double widthM = Math.min(wholeM, stripM);
    double axisM = s.stock().heightM() / 2 + s.cutter().diameterM() / 2 - widthM;
    return new LaidFlat(turned(s, Operation.TOP_EDGE, s.sideDepthM(), axisM), strips);
  }

  private static Setup turned(Setup s, Operation operation, double depthM, double offsetM) {
    Stock stock = s.stock();
    Cut cut = s.cut();
    Setup lying =
        SetupEditor.of(s)
            .size(stock.heightM(), stock.thicknessM())
            .grip(stock.thicknessM() / 2)
            .done();
    Cut turned =
        CutBuilder.builder(cut).operation(operation).axialDepthM(depthM).offsetM(offsetM).build();
    return lying.with(turned, s.passes().stream().map(p -> turned(p, depthM)).toList());
  }

  /**
   * The amount a planned pass takes off the face stays; the end of the cutter and its side change.
   */
  private static PlannedCut turned(PlannedCut pass, double depthM) {
    return pass.radialDepthM() == null
        ? new PlannedCut(pass.stage(), depthM, pass.axialDepthM(), pass.feedPerToothM())
        : new PlannedCut(pass.stage(), pass.radialDepthM(), null, pass.feedPerToothM());
  }
}
