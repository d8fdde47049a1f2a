package org.standproud.mechanics.sampling;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.standproud.mechanics.OutsideValidity;
import org.standproud.mechanics.cutter.CutterStanding;
import org.standproud.mechanics.cutter.EdgeRounding;
import org.standproud.mechanics.cutter.LeastChip;
import org.standproud.mechanics.cutter.SpindleCompliance;
import org.standproud.mechanics.cutter.ToolStrength;
import org.standproud.mechanics.cutter.WornLand;
import org.standproud.mechanics.drive.HandFeed;
import org.standproud.mechanics.drive.TableFriction;
import org.standproud.mechanics.finish.EdgeRoughening;
import org.standproud.mechanics.finish.FeedMarks;
import org.standproud.mechanics.force.CorrectedKienzle;
import org.standproud.mechanics.force.ForceInput;
import org.standproud.mechanics.force.ForceModel;
import org.standproud.mechanics.holding.contact.JointStiffness;
import org.standproud.mechanics.holding.jaw.FaceState;
import org.standproud.mechanics.holding.jaw.JawFriction;
import org.standproud.mechanics.tooltip.SpindleNose;
import org.standproud.mechanics.vibration.StabilityInput;
import org.standproud.setup.Band;
import org.standproud.setup.Cut;
import org.standproud.setup.Cutter;
import org.standproud.setup.CutterKind;
import org.standproud.setup.HeldMeasurement;
import org.standproud.setup.Hold;
import org.standproud.setup.Machine;
import org.standproud.setup.Material;
import org.standproud.setup.Setup;
import org.standproud.setup.StockSurface;
import org.standproud.setup.ToolMaterial;
import org.standproud.setup.Vise;

/**
 * The one distribution of each unknown of a set-up. What the caller gives as a band is triangular
 * over it, and what the caller gives as one value is that value. The figures of the models are
 * triangular over the bands that the models state with their sources; what no record holds is drawn
 * from what shops have: common practice, no source, unless said otherwise.
 */
public final class Catalogue {

  /** Normal deviate of the 95th percentile. */
  private static final double Z95 = 1.645;

  /** Torque of a hand on the handle of a vise in N.m: 30 to 116 in nine shops of ten. */
  private static final Distribution HAND_TORQUE_NM = lognormal(60, 116, 130);

  /**
   * Run-out of a cutter that was not indicated, in m: half under 0.018 mm, a twentieth over 0.05.
   */
  private static final Distribution RUN_OUT_M = lognormal(0.018e-3, 0.05e-3, 0.1e-3);

  /** Part of its face on either side of the middle that a movable jaw bears on. */
  private static final Band BEARING = new Band(0, 1.0 / 3, 1);

  /** Place in a band of packing properties. */
  private static final Band PLACE = new Band(0, 0.5, 1);

  private static final Distribution ANY = new Distribution.Uniform(0, 1);

  private final Map<Unknown, Distribution> all = new EnumMap<>(Unknown.class);

  private @Nullable OutsideValidity refusal;

  private Catalogue() {}

  /**
   * The distributions of a set-up, one of every unknown. Where an input is outside the range of a
   * formula those that hang on it are no number.
   *
   * @param setup a checked set-up
   */
  static Catalogue of(Setup setup) {
    Catalogue catalogue = new Catalogue();
    catalogue.attempt(() -> catalogue.force(setup));
    catalogue.attempt(() -> catalogue.cut(setup.cut(), setup.cutter()));
    catalogue.attempt(() -> catalogue.vise(setup));
    catalogue.attempt(() -> catalogue.plate(setup.stock().material(), setup.hold().measured()));
    catalogue.attempt(() -> catalogue.machine(setup.machine(), setup.cut()));
    catalogue.attempt(() -> catalogue.cutter(setup.cutter()));
    for (Unknown unknown : Unknown.values()) {
      catalogue.all.putIfAbsent(unknown, Distribution.exactly(Double.NaN));
    }
    return catalogue;
  }

  private void attempt(Runnable part) {
    try {
      part.run();
    } catch (OutsideValidity refused) {
      refusal = refusal == null ? refused : refusal;
    }
  }

  /** The distribution of every unknown. */
  Map<Unknown, Distribution> all() {
    return all;
  }

  /** Why some are no number; null if all are. */
  @Nullable OutsideValidity refusal() {
    return refusal;
  }

  private static Distribution lognormal(double median, double percentile95, double greatest) {
    return new Distribution.Lognormal(median, Math.log(percentile95 / median) / Z95, greatest);
  }

  /** By its median and 95th percentile. */
  private static Distribution lognormal(Band percentiles, double greatest) {
    return lognormal(percentiles.likely(), percentiles.high(), greatest);
  }

  private void put(Unknown unknown, Band band) {
    all.put(unknown, Distribution.over(band));
  }

  private void force(Setup setup) {
    Cutter cutter = setup.cutter();
    Material material = setup.stock().material();
    if (ForceInput.from(setup).model() instanceof ForceModel.LinearEdge linear) {
      put(Unknown.SPECIFIC_FORCE, linear.factor());
      put(Unknown.LIFT_RATIO, linear.along());
      for (Unknown known :
          new Unknown[] {
            Unknown.WEAR, Unknown.PROCESS, Unknown.TOOL, Unknown.RAKE, Unknown.NORMAL_RATIO
          }) {
        all.put(known, Distribution.exactly(1));
      }
      all.put(Unknown.EXPONENT, Distribution.exactly(0));
      return;
    }
    put(Unknown.SPECIFIC_FORCE, material.specificCuttingForcePa());
    put(Unknown.EXPONENT, material.chipExponent());
    put(Unknown.WEAR, CorrectedKienzle.wear(cutter.edge()));
    put(Unknown.PROCESS, CorrectedKienzle.MILLING);
    put(
        Unknown.TOOL,
        cutter.toolMaterial() == ToolMaterial.HSS ? CorrectedKienzle.HSS : Band.exactly(1));
    put(Unknown.RAKE, CorrectedKienzle.rake(material.group(), cutter.rakeRad()));
    put(Unknown.NORMAL_RATIO, CorrectedKienzle.normalRatio(cutter.edge()));
    put(Unknown.LIFT_RATIO, CorrectedKienzle.LIFT_PER_TAN_HELIX.times(Math.tan(cutter.helixRad())));
  }

  private void cut(Cut cut, Cutter cutter) {
    Band feed = HandFeed.feedPerToothM(cut);
    all.put(
        Unknown.FEED,
        HandFeed.assumed(cut)
            ? new Distribution.Lognormal(
                feed.likely(), Math.log(HandFeed.OVER_MEANT.high()) / Z95, feed.high())
            : Distribution.over(feed));
    Double runOut = cutter.runOutM();
    all.put(Unknown.RUN_OUT, runOut == null ? RUN_OUT_M : Distribution.exactly(runOut));
    put(Unknown.FEED_MARKS, new Band(FeedMarks.teethApart(cutter), cutter.teeth(), cutter.teeth()));
    put(Unknown.ROUGHENING, EdgeRoughening.factor(cutter.edge()));
  }

  private void vise(Setup setup) {
    Hold hold = setup.hold();
    Vise vise = hold.vise();
    if (hold.clampingForceN() != null) {
      put(Unknown.CLAMPING_FORCE, hold.clampingForceN());
      all.put(Unknown.SCREW_FRICTION, Distribution.exactly(0.5));
    } else {
      all.put(
          Unknown.CLAMPING_FORCE,
          hold.handleTorqueNm() == null
              ? HAND_TORQUE_NM
              : Distribution.over(hold.handleTorqueNm()));
      all.put(Unknown.SCREW_FRICTION, ANY);
    }
    put(
        Unknown.FRICTION,
        JawFriction.of(hold, setup.stock().surface(), FaceState.of(hold)).coefficient());
    put(Unknown.BEARING, BEARING);
    Double spot = setup.stock().highSpotM();
    all.put(
        Unknown.HIGH_SPOT,
        spot == null ? highSpotM(setup.stock().surface()) : Distribution.exactly(spot));
    all.put(Unknown.SPOT_PLACE, ANY);
    all.put(Unknown.SPOT_SIDE, ANY);
    all.put(Unknown.SPOT_SPAN, ANY);
    put(Unknown.FIXED_JAW, vise.fixedJawStiffnessNPerM());
    put(Unknown.MOVABLE_JAW, vise.movableJawStiffnessNPerM());
    put(Unknown.JAW_LIFT, vise.movableJawLiftRad());
    put(Unknown.JOINT, JointStiffness.coefficient(setup.stock().surface()));
    put(Unknown.PACKING, PLACE);
    put(Unknown.PACKING_YIELD, PLACE);
    all.put(Unknown.BACKING, hold.backing().isEmpty() ? Distribution.exactly(0.5) : ANY);
    all.put(Unknown.STOP, hold.stop() == null ? ANY : Distribution.exactly(0.5));
    all.put(Unknown.STOP_HEIGHT, ANY);
    all.put(Unknown.SEAT, hold.seat() == null ? ANY : Distribution.exactly(0.5));
  }

  /**
   * Height of the highest spot of unmeasured gripped faces, in m: half of machined faces are flat
   * within 0.005 mm and a twentieth worse than 0.03; rolled 0.03 and 0.12, sawn 0.08 and 0.25, cast
   * 0.15 and 0.5. Common practice, no source; EN 10029 permits far more on rolled plate, but over a
   * metre.
   */
  private static Distribution highSpotM(@Nullable StockSurface surface) {
    if (surface == null) {
      return lognormal(0.03e-3, 0.25e-3, 1e-3);
    }
    return switch (surface) {
      case MACHINED -> lognormal(0.005e-3, 0.03e-3, 0.15e-3);
      case ROLLED -> lognormal(0.03e-3, 0.12e-3, 0.5e-3);
      case SAWN -> lognormal(0.08e-3, 0.25e-3, 1e-3);
      case CAST -> lognormal(0.15e-3, 0.5e-3, 2e-3);
    };
  }

  private void plate(Material material, HeldMeasurement measured) {
    put(Unknown.MODULUS, material.youngsModulusPa());
    put(Unknown.YIELD, material.yieldPa());
    put(
        Unknown.DAMPING,
        measured.dampingRatio() == null ? StabilityInput.USUAL_DAMPING : measured.dampingRatio());
    if (measured.noteHz() != null) {
      put(Unknown.NOTE, measured.noteHz());
    }
    if (measured.stiffnessNPerM() != null) {
      put(Unknown.EDGE_STIFFNESS, measured.stiffnessNPerM());
    }
  }

  private void machine(Machine machine, Cut cut) {
    put(Unknown.SLIDE_FRICTION, machine.slideFriction());
    put(Unknown.GIB, machine.gibPreloadN());
    put(Unknown.SLIDE_LOCK, TableFriction.lockDragN(cut.slideLocked()));
    put(Unknown.SPINDLE, machine.spindleStiffnessNPerM());
    put(Unknown.SPINDLE_PIVOT, SpindleCompliance.PER_PIVOT_M);
    all.put(Unknown.SPINDLE_FREQUENCY, lognormal(SpindleNose.OWN_HZ, 3000));
    all.put(Unknown.TAPER, lognormal(SpindleNose.TAPER_NM_PER_RAD, 1e7));
    all.put(Unknown.SPINDLE_DAMPING, lognormal(SpindleNose.DAMPING, 0.2));
    put(Unknown.EFFICIENCY, machine.driveEfficiency());
  }

  private void cutter(Cutter cutter) {
    ToolStrength tool = ToolStrength.of(cutter.toolMaterial());
    put(Unknown.TOOL_MODULUS, tool.modulusPa());
    put(
        Unknown.TOOL_STRENGTH,
        cutter.kind() == CutterKind.END_MILL
            ? tool.ruptureStrengthPa()
            : CutterStanding.ARBOR_YIELD_PA);
    put(Unknown.LEAST_CHIP, LeastChip.OVER_EDGE_RADIUS);
    put(Unknown.EDGE_ROUNDING, EdgeRounding.growth(cutter.edge()));
    put(Unknown.LAND, WornLand.widthM(cutter.edge()));
  }
}
