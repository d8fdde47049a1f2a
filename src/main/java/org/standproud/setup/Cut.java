package org.standproud.setup;

import io.soabase.recordbuilder.core.RecordBuilder;
import org.jspecify.annotations.Nullable;

/**
 * One pass of the cutter.
 *
 * @param operation which face is milled
 * @param stage rough or finish
 * @param axialDepthM a_p, depth along the cutter axis in m
 * @param offsetM position of the cutter axis along Y from the middle of the stock thickness,
 *     positive toward the fixed jaw, in m
 * @param feed which way the cutter moves along the jaws
 * @param spindleSpeedRevPerS n in 1/s
 * @param feedPerToothM f_z in m; a band when fed by hand
 * @param feedDrive hand or power
 * @param slideLocked whether the X slide is partly locked to add drag; null if not known
 * @param otherSlidesLocked whether the slides that do not feed are locked; null if not known
 * @param coolant what runs over the cutter; null if not known
 * @param leadInM distance from the cutter axis to the end of the stock where the feed starts in m
 */
@RecordBuilder
public record Cut(
    Operation operation,
    Stage stage,
    double axialDepthM,
    double offsetM,
    FeedDirection feed,
    double spindleSpeedRevPerS,
    Band feedPerToothM,
    FeedDrive feedDrive,
    @Nullable Boolean slideLocked,
    @Nullable Boolean otherSlidesLocked,
    @Nullable Coolant coolant,
    double leadInM) {}
