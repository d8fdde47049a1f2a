package org.standproud.mechanics.holding;

import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;

/**
 * One value of each thing a hold depends on.
 *
 * @param clampingForceN clamping force in N
 * @param friction friction of the weaker face
 * @param bearing where the jaws bear: -1 worst, 0 likely, 1 best
 * @param fixedJawNPerM stiffness of the fixed jaw in N/m
 * @param movableJawNPerM stiffness of the movable jaw in N/m
 * @param peaks greatest forces each way
 */
public record HoldDraw(
    double clampingForceN,
    double friction,
    double bearing,
    double fixedJawNPerM,
    double movableJawNPerM,
    Peaks peaks) {}
