package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/**
 * The plate that a job ends with. A tolerance is the half-width of a symmetrical one.
 *
 * @param lengthM length in m
 * @param thicknessM thickness in m
 * @param heightM height in m
 * @param lengthToleranceM tolerance of the length in m; null if none is asked for
 * @param thicknessToleranceM tolerance of the thickness in m; null likewise
 * @param heightToleranceM tolerance of the height in m; null likewise
 * @param flatnessM flatness of the broad sides in m; null likewise
 * @param roughnessM greatest Ra of the milled faces in m; null likewise
 */
@RecordBuilder
public record FinishedPart(
    double lengthM,
    double thicknessM,
    double heightM,
    @Nullable Double lengthToleranceM,
    @Nullable Double thicknessToleranceM,
    @Nullable Double heightToleranceM,
    @Nullable Double flatnessM,
    @Nullable Double roughnessM) {}
