package org.standproud.mechanics.holding;

import org.standproud.mechanics.holding.slip.HoldingLoad.Peaks;
import org.standproud.setup.Stop;

/**
 * One value of each thing a hold depends on.
 *
 * @param clampingForceN clamping force in N
 * @param friction friction of the weaker face
 * @param bearing part of its face on either side of its middle that the movable jaw may bear on
 *     when it is pushed over, 0 to 1
 * @param spotM height of a high spot on a gripped face in m
 * @param spotPlace its depth below the jaw top as a part of the grip, 0 to 1
 * @param spotSpanM how far apart the stock bears on either side of it along the jaws, in m
 * @param spotAtFixedJaw whether it lies at the fixed jaw
 * @param fixedJawNPerM stiffness of the fixed jaw in N/m
 * @param movableJawNPerM stiffness of the movable jaw in N/m
 * @param liftRad lift of the movable jaw in rad
 * @param jointCoefficient coefficient of the law of pressed faces
 * @param packingPlace place in the band of the modulus of packing, 0 to 1
 * @param packingYieldPlace place in the band of its yield, 0 to 1
 * @param modulusPa Young's modulus of the stock in Pa
 * @param yieldPa yield of the stock in Pa
 * @param seated whether the underside sits on something
 * @param stop at which end a stop stands
 * @param peaks greatest forces each way, rebound included
 * @param corners x, y and z of the forces that act, each at one moment
 * @param backingPlace place in the bands of what a backing withstands, 0 to 1
 */
public record HoldDraw(
    double clampingForceN,
    double friction,
    double bearing,
    double spotM,
    double spotPlace,
    double spotSpanM,
    boolean spotAtFixedJaw,
    double fixedJawNPerM,
    double movableJawNPerM,
    double liftRad,
    double jointCoefficient,
    double packingPlace,
    double packingYieldPlace,
    double modulusPa,
    double yieldPa,
    boolean seated,
    Stop stop,
    Peaks peaks,
    double[] corners,
    double backingPlace) {}
