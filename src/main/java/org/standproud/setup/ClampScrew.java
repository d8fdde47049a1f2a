package org.standproud.setup;

/**
 * The screw of a vise.
 *
 * @param meanDiameterM mean thread diameter in m
 * @param leadM axial travel per turn in m
 * @param threadHalfAngleRad half of the thread angle in rad; zero for a square thread
 * @param threadFriction coefficient of friction in the thread
 * @param collarDiameterM mean diameter of the thrust collar in m
 * @param collarFriction coefficient of friction of the thrust collar
 */
public record ClampScrew(
    double meanDiameterM,
    double leadM,
    double threadHalfAngleRad,
    Band threadFriction,
    double collarDiameterM,
    Band collarFriction) {}
