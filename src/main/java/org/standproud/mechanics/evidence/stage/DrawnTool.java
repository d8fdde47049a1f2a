package org.standproud.mechanics.evidence.stage;

import java.util.function.IntPredicate;
import org.standproud.mechanics.cutter.ToolStrength;
import org.standproud.mechanics.sampling.DrawnCut;
import org.standproud.mechanics.sampling.JointSample;
import org.standproud.mechanics.sampling.Unknown;
import org.standproud.mechanics.tooltip.RememberedTools;
import org.standproud.mechanics.tooltip.SpindleNose;
import org.standproud.mechanics.tooltip.TipModes;
import org.standproud.mechanics.tooltip.ToolOnSpindle;
import org.standproud.setup.CutterKind;

/**
 * How cutter, holder and spindle give and ring at the cutting end in each draw. All modes damp
 * alike: what is drawn is the damping that is measured at the cutting end of tools in their
 * spindles, joints included.
 */
final class DrawnTool {

  /** Shared by all threads; an answer is the same whether its tool was kept or not. */
  private static final RememberedTools TOOLS = new RememberedTools(256);

  /** A spindle that hardly tilts counts with this. */
  private static final double FARTHEST_PIVOT_M = 2;

  private final double[] hz;
  private final double[] damping;
  private final double[] stiffness;
  private final double[] give;

  /**
   * The tool of a cut.
   *
   * @param cut the cut
   * @param wanted the draws that are asked for
   */
  DrawnTool(DrawnCut cut, IntPredicate wanted) {
    int n = cut.draws();
    this.hz = new double[TipModes.MODES * n];
    this.damping = new double[n];
    this.stiffness = new double[TipModes.MODES * n];
    this.give = new double[n];
    ToolOnSpindle tool = TOOLS.of(cut.setup().cutter());
    boolean solid = cut.setup().cutter().kind() == CutterKind.END_MILL;
    double likelyPa = ToolStrength.of(cut.setup().cutter().toolMaterial()).modulusPa().likely();
    JointSample sample = cut.sample();
    TipModes modes = new TipModes(tool);
    for (int draw = 0; draw < n; draw++) {
      if (!wanted.test(draw)) {
        continue;
      }
      SpindleNose nose =
          new SpindleNose(
              sample.at(Unknown.SPINDLE, draw),
              Math.min(FARTHEST_PIVOT_M, 1 / sample.at(Unknown.SPINDLE_PIVOT, draw)),
              sample.at(Unknown.TAPER, draw),
              sample.at(Unknown.SPINDLE_FREQUENCY, draw),
              sample.at(Unknown.SPINDLE_DAMPING, draw));
      double edge = solid ? sample.at(Unknown.TOOL_MODULUS, draw) / likelyPa : 1;
      modes.solve(edge, nose);
      give[draw] = tool.giveMPerN(edge, nose);
      damping[draw] = nose.dampingRatio();
      for (int m = 0; m < TipModes.MODES; m++) {
        hz[TipModes.MODES * draw + m] = modes.hz(m);
        stiffness[TipModes.MODES * draw + m] = modes.stiffnessNPerM(m);
      }
    }
  }

  /** Static give at the cutting end in m/N. */
  double giveMPerN(int draw) {
    return give[draw];
  }

  /** Natural frequency of a mode in Hz. */
  double hz(int draw, int mode) {
    return hz[TipModes.MODES * draw + mode];
  }

  /** Damping of every mode over critical. */
  double damping(int draw) {
    return damping[draw];
  }

  /** Stiffness of a mode at the cutting end in N/m. */
  double stiffnessNPerM(int draw, int mode) {
    return stiffness[TipModes.MODES * draw + mode];
  }
}
