package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A milling cutter in its holder. Symbols are those of ISO 13399.
 *
 * @param name catalogue name
 * @param kind family
 * @param toolMaterial edge material
 * @param spin sense of rotation seen from above
 * @param diameterM DC, cutting diameter in m
 * @param teeth ZEFP, effective teeth
 * @param greatestDepthM APMX, greatest axial depth in m
 * @param overhangM LPR, length from the spindle nose (holder included) to the cutting end in m
 * @param stickOutM length from the holder face to the cutting end in m
 * @param fluteLengthM length of the fluted part, or of the cutter body, in m
 * @param shankDiameterM shank or arbor diameter in m
 * @param holderDiameterM greatest diameter of the holder in m
 * @param enteringAngleRad KAPR in rad
 * @param cornerRadiusM RE in m
 * @param helixRad FHA in rad, positive if it lifts the chips toward the shank whichever the spin;
 *     zero for straight edges
 * @param rakeRad radial rake in rad
 * @param wiperM BS, length of the wiper flat in m; zero if it has none
 * @param edgeRadiusM rounding of the edge in m
 * @param edge state of the edges; null if not known
 * @param chippedTeeth numbers (from 0) of teeth that are chipped
 * @param missingTeeth numbers (from 0) of teeth that are missing
 * @param runOutM radial run-out (total indicator reading) in m; null if not measured
 * @param greatestSpeedRevPerS greatest spindle speed marked on cutter or holder, the lesser of
 *     both, in 1/s; null if none is known
 */
@RecordBuilder
public record Cutter(
    String name,
    CutterKind kind,
    ToolMaterial toolMaterial,
    Spin spin,
    double diameterM,
    int teeth,
    double greatestDepthM,
    double overhangM,
    double stickOutM,
    double fluteLengthM,
    double shankDiameterM,
    double holderDiameterM,
    double enteringAngleRad,
    double cornerRadiusM,
    double helixRad,
    double rakeRad,
    double wiperM,
    double edgeRadiusM,
    @Nullable EdgeCondition edge,
    List<Integer> chippedTeeth,
    List<Integer> missingTeeth,
    @Nullable Double runOutM,
    @Nullable Double greatestSpeedRevPerS) {

  /** Copies the lists. */
  public Cutter {
    chippedTeeth = List.copyOf(chippedTeeth);
    missingTeeth = List.copyOf(missingTeeth);
  }
}
