package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/**
 * The piece to be milled, as it stands in the hold.
 *
 * @param lengthM length along X in m
 * @param thicknessM thickness along Y in m
 * @param heightM whole height along Z in m, gripped part included
 * @param material what it is made of
 * @param surface condition of the faces the jaws bear on; null if not known
 * @param highSpotM greatest height of a high spot on a gripped face in m; null if not known
 * @param deburred whether the gripped edges were deburred; null if not known
 * @param condition how it was delivered; null if not known
 */
@RecordBuilder
public record Stock(
    double lengthM,
    double thicknessM,
    double heightM,
    Material material,
    @Nullable StockSurface surface,
    @Nullable Double highSpotM,
    @Nullable Boolean deburred,
    @Nullable StockCondition condition) {}
