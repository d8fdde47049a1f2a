package org.standproud.mechanics.engagement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.CutBuilder;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterBuilder;
import org.standproud.setup.CutterKind;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialBuilder;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.Operation;
import org.standproud.setup.Spin;
import org.standproud.setup.Stage;
import org.standproud.setup.Stock;
import org.standproud.setup.StockBuilder;
import org.standproud.setup.ToolMaterial;

/** A pass for tests, in millimetres and degrees, that can be changed one thing at a time. */
public record PassFixture(
    double diameterMm,
    int teeth,
    double widthMm,
    double lengthMm,
    double offsetMm,
    Band feedMm,
    double kappaDeg,
    double depthMm,
    double helixDeg,
    double cornerMm,
    double revPerS,
    Spin spin,
    FeedDirection feedDirection,
    @Nullable EdgeCondition edge,
    List<Integer> chipped,
    List<Integer> missing,
    @Nullable Double runOutMm,
    Band kcMpa,
    Band mc) {

  /** A square-shouldered straight-toothed cutter, clockwise, fed toward +x. */
  public static PassFixture pass(
      double diameterMm, int teeth, double widthMm, double offsetMm, double feedMm) {
    return new PassFixture(
        diameterMm,
        teeth,
        widthMm,
        200,
        offsetMm,
        Band.exactly(feedMm),
        90,
        2,
        0,
        0,
        10,
        Spin.CLOCKWISE,
        FeedDirection.PLUS_X,
        EdgeCondition.FRESH,
        List.of(),
        List.of(),
        0.0,
        Band.exactly(1500),
        Band.exactly(0.22));
  }

  /** A conventional side cut: the stock lies on the +y side of the cutter, clockwise, toward +x. */
  public static PassFixture conventional(
      double diameterMm, int teeth, double radialDepthMm, double feedMm) {
    return pass(diameterMm, teeth, 200, radialDepthMm - diameterMm / 2 - 100, feedMm);
  }

  /** A climb side cut: the stock lies on the -y side of the cutter, clockwise, toward +x. */
  public static PassFixture climb(
      double diameterMm, int teeth, double radialDepthMm, double feedMm) {
    return pass(diameterMm, teeth, 200, 100 + diameterMm / 2 - radialDepthMm, feedMm);
  }

  public PassFixture turning(Spin other, FeedDirection feed) {
    return new PassFixture(
        diameterMm,
        teeth,
        widthMm,
        lengthMm,
        offsetMm,
        feedMm,
        kappaDeg,
        depthMm,
        helixDeg,
        cornerMm,
        revPerS,
        other,
        feed,
        edge,
        chipped,
        missing,
        runOutMm,
        kcMpa,
        mc);
  }

  public PassFixture at(double otherOffsetMm) {
    return new PassFixture(
        diameterMm,
        teeth,
        widthMm,
        lengthMm,
        otherOffsetMm,
        feedMm,
        kappaDeg,
        depthMm,
        helixDeg,
        cornerMm,
        revPerS,
        spin,
        feedDirection,
        edge,
        chipped,
        missing,
        runOutMm,
        kcMpa,
        mc);
  }

  public PassFixture ofLength(double otherLengthMm) {
    return new PassFixture(
        diameterMm,
        teeth,
        widthMm,
        otherLengthMm,
        offsetMm,
        feedMm,
        kappaDeg,
        depthMm,
        helixDeg,
        cornerMm,
        revPerS,
        spin,
        feedDirection,
        edge,
        chipped,
        missing,
        runOutMm,
        kcMpa,
        mc);
  }

  public PassFixture shaped(double kappa, double depth, double helix, double corner) {
    return new PassFixture(
        diameterMm,
        teeth,
        widthMm,
        lengthMm,
        offsetMm,
        feedMm,
        kappa,
        depth,
        helix,
        corner,
        revPerS,
        spin,
        feedDirection,
        edge,
        chipped,
        missing,
        runOutMm,
        kcMpa,
        mc);
  }

  public PassFixture fed(Band feed, double turnsPerS) {
    return new PassFixture(
        diameterMm,
        teeth,
        widthMm,
        lengthMm,
        offsetMm,
        feed,
        kappaDeg,
        depthMm,
        helixDeg,
        cornerMm,
        turnsPerS,
        spin,
        feedDirection,
        edge,
        chipped,
        missing,
        runOutMm,
        kcMpa,
        mc);
  }

  public PassFixture of(Band kc, Band exponent) {
    return new PassFixture(
        diameterMm,
        teeth,
        widthMm,
        lengthMm,
        offsetMm,
        feedMm,
        kappaDeg,
        depthMm,
        helixDeg,
        cornerMm,
        revPerS,
        spin,
        feedDirection,
        edge,
        chipped,
        missing,
        runOutMm,
        kc,
        exponent);
  }

  public PassFixture edges(
      @Nullable EdgeCondition state,
      List<Integer> chippedTeeth,
      List<Integer> missingTeeth,
      @Nullable Double runOut) {
    return new PassFixture(
        diameterMm,
        teeth,
        widthMm,
        lengthMm,
        offsetMm,
        feedMm,
        kappaDeg,
        depthMm,
        helixDeg,
        cornerMm,
        revPerS,
        spin,
        feedDirection,
        state,
        chippedTeeth,
        missingTeeth,
        runOut,
        kcMpa,
        mc);
  }

  public Stock stock() {
    CuttingRange any = new CuttingRange(0.1, 10, 1e-5, 1e-3);
    Material material =
        MaterialBuilder.builder()
            .name("test")
            .group(MaterialGroup.P)
            .specificCuttingForcePa(kcMpa.times(1e6))
            .chipExponent(mc)
            .youngsModulusPa(Band.exactly(205e9))
            .poissonsRatio(0.3)
            .densityKgPerM3(7850)
            .yieldPa(Band.exactly(300e6))
            .hss(any)
            .carbide(any)
            .source("test")
            .build();
    return StockBuilder.builder()
        .lengthM(lengthMm / 1000)
        .thicknessM(widthMm / 1000)
        .heightM(0.1)
        .material(material)
        .build();
  }

  public Cutter cutter() {
    return CutterBuilder.builder()
        .name("test")
        .kind(CutterKind.FACE_MILL)
        .toolMaterial(ToolMaterial.CARBIDE)
        .spin(spin)
        .diameterM(diameterMm / 1000)
        .teeth(teeth)
        .greatestDepthM(0.05)
        .overhangM(0.1)
        .stickOutM(0.05)
        .fluteLengthM(0.05)
        .shankDiameterM(0.02)
        .holderDiameterM(0.04)
        .enteringAngleRad(Math.toRadians(kappaDeg))
        .cornerRadiusM(cornerMm / 1000)
        .helixRad(Math.toRadians(helixDeg))
        .rakeRad(0)
        .wiperM(0)
        .edgeRadiusM(1e-5)
        .edge(edge)
        .chippedTeeth(chipped)
        .missingTeeth(missing)
        .runOutM(runOutMm == null ? null : runOutMm / 1000)
        .build();
  }

  public Cut cut() {
    return CutBuilder.builder()
        .operation(Operation.TOP_EDGE)
        .stage(Stage.ROUGH)
        .axialDepthM(depthMm / 1000)
        .offsetM(offsetMm / 1000)
        .feed(feedDirection)
        .spindleSpeedRevPerS(revPerS)
        .feedPerToothM(feedMm.times(1e-3))
        .feedDrive(FeedDrive.POWER)
        .leadInM(0.2)
        .build();
  }

  /** Its engagement, which must be a cut. */
  public Engagement.Cutting cutting() {
    return (Engagement.Cutting) Engagement.of(stock(), cutter(), cut());
  }
}
