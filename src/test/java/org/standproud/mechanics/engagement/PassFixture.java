package org.standproud.mechanics.engagement;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterKind;
import org.standproud.setup.CuttingRange;
import org.standproud.setup.EdgeCondition;
import org.standproud.setup.FeedDirection;
import org.standproud.setup.FeedDrive;
import org.standproud.setup.Material;
import org.standproud.setup.MaterialGroup;
import org.standproud.setup.Operation;
import org.standproud.setup.Spin;
import org.standproud.setup.Stage;
import org.standproud.setup.Stock;
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
        new Material(
            "test",
            MaterialGroup.P,
            kcMpa.times(1e6),
            mc,
            Band.exactly(205e9),
            0.3,
            7850,
            Band.exactly(300e6),
            null,
            any,
            any,
            "test");
    return new Stock(lengthMm / 1000, widthMm / 1000, 0.1, material, null, null, null);
  }

  public Cutter cutter() {
    return new Cutter(
        "test",
        CutterKind.FACE_MILL,
        ToolMaterial.CARBIDE,
        spin,
        diameterMm / 1000,
        teeth,
        0.05,
        0.1,
        0.05,
        0.05,
        0.02,
        0.04,
        Math.toRadians(kappaDeg),
        cornerMm / 1000,
        Math.toRadians(helixDeg),
        0,
        0,
        1e-5,
        edge,
        chipped,
        missing,
        runOutMm == null ? null : runOutMm / 1000);
  }

  public Cut cut() {
    return new Cut(
        Operation.TOP_EDGE,
        Stage.ROUGH,
        depthMm / 1000,
        offsetMm / 1000,
        feedDirection,
        revPerS,
        feedMm.times(1e-3),
        FeedDrive.POWER,
        null,
        null,
        0.2);
  }

  /** Its engagement, which must be a cut. */
  public Engagement.Cutting cutting() {
    return (Engagement.Cutting) Engagement.of(stock(), cutter(), cut());
  }
}
