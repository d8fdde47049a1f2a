package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;

/**
 * A machine vise.
 *
 * @param name catalogue name
 * @param jawWidthM width of the jaws along X in m
 * @param jawHeightM height of the jaw face in m
 * @param greatestOpeningM greatest opening in m
 * @param bedHeightM height of the bed of the vise above the table in m
 * @param screw the screw
 * @param greatestClampingForceN the force its maker allows in N
 * @param jawSurface the jaw faces
 * @param fixedJawStiffnessNPerM stiffness of the fixed jaw against a force across it at the jaw top
 *     in N/m
 * @param movableJawStiffnessNPerM the same for the movable jaw in N/m
 * @param movableJawLiftRad tilt of the movable jaw under clamping in rad
 */
@RecordBuilder
public record Vise(
    String name,
    double jawWidthM,
    double jawHeightM,
    double greatestOpeningM,
    double bedHeightM,
    ClampScrew screw,
    double greatestClampingForceN,
    JawSurface jawSurface,
    Band fixedJawStiffnessNPerM,
    Band movableJawStiffnessNPerM,
    Band movableJawLiftRad) {}
