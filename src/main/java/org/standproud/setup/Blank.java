package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/**
 * The piece a job starts from, before anything is milled.
 *
 * @param lengthM length in m
 * @param thicknessM thickness in m, between the broad sides
 * @param heightM height in m, between the long edges
 * @param material what it is made of
 * @param surface condition of the broad sides; null if not known
 * @param edges condition of the edges and ends; null if it is that of the broad sides
 * @param highSpotM greatest height of a high spot on a broad side in m; null if not known
 * @param condition how it was delivered; null if not known
 */
@RecordBuilder
public record Blank(
    double lengthM,
    double thicknessM,
    double heightM,
    Material material,
    @Nullable StockSurface surface,
    @Nullable StockSurface edges,
    @Nullable Double highSpotM,
    @Nullable StockCondition condition) {}
