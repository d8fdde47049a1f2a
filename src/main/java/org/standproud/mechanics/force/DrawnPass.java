package org.standproud.mechanics.force;

/**
 * The force of a pass on the work at single values of all that is not known, in the vise frame, in
 * N.
 *
 * @param peaks extremes over the pass
 * @param corners x, y and z of the forces of the pass that reach farthest, each at one angle of the
 *     cutter
 * @param inPlaneN greatest resultant in the plane of the table over the pass
 * @param tangentialN greatest sum of the tangential forces in steady cutting
 * @param meanTangentialN mean sum of the tangential forces in steady cutting
 * @param meanXN mean along the jaws over the pass
 * @param blow one tooth with its whole bite where the cutter first touches
 * @param fillingInPlaneN greatest in the plane of the table until the whole arc is in the stock
 * @param fillingLeastYN least across the stock until then
 * @param fillingGreatestYN greatest across the stock until then
 * @param acrossTurnN across the stock at equal steps of one turn of steady cutting
 */
public record DrawnPass(
    PathPeaks peaks,
    double[] corners,
    double inPlaneN,
    double tangentialN,
    double meanTangentialN,
    double meanXN,
    ForceVector blow,
    double fillingInPlaneN,
    double fillingLeastYN,
    double fillingGreatestYN,
    double[] acrossTurnN) {}
