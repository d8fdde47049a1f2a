package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A milling machine with an upright spindle.
 *
 * @param name catalogue name
 * @param kind how it is driven
 * @param travelXM table travel along X in m
 * @param travelYM saddle travel along Y in m
 * @param travelZM knee or head travel along Z in m
 * @param noseToTableM greatest distance from spindle nose to table in m
 * @param quillTravelM quill travel in m; zero if it has none
 * @param speedsRevPerS the speeds of a geared or stepped head in 1/s, rising; empty if the speed is
 *     stepless
 * @param leastSpeedRevPerS least spindle speed in 1/s
 * @param greatestSpeedRevPerS greatest spindle speed in 1/s
 * @param power power curve of the motor, at least one point, rising speed
 * @param driveEfficiency power at the cutter over power at the motor
 * @param backlashM lost motion of the X screw in m
 * @param preloadedScrew whether the X screw is free of lost motion under load either way
 * @param movingMassKg mass of table, vise and stock that the X screw moves in kg
 * @param slideFriction coefficient of friction of the X slide
 * @param gibPreloadN force of the gib on the X slide in N
 * @param spindleStiffnessNPerM stiffness of spindle and holder across the axis at the nose in N/m
 * @param greatestFeedMPerS greatest table feed in m/s; null if hand feed only
 */
@RecordBuilder
public record Machine(
    String name,
    MachineKind kind,
    double travelXM,
    double travelYM,
    double travelZM,
    double noseToTableM,
    double quillTravelM,
    List<Double> speedsRevPerS,
    double leastSpeedRevPerS,
    double greatestSpeedRevPerS,
    List<PowerPoint> power,
    Band driveEfficiency,
    double backlashM,
    boolean preloadedScrew,
    double movingMassKg,
    Band slideFriction,
    Band gibPreloadN,
    Band spindleStiffnessNPerM,
    @Nullable Double greatestFeedMPerS) {

  /** Copies the lists. */
  public Machine {
    speedsRevPerS = List.copyOf(speedsRevPerS);
    power = List.copyOf(power);
  }
}
