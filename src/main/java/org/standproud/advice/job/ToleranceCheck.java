package org.standproud.advice.job;

import org.jspecify.annotations.Nullable;
import org.standproud.advice.Quantity;

/**
 * Whether deflection and feed marks of the finishing passes keep to what is asked for. The setting
 * of the depth comes on top.
 *
 * @param what thickness, height, length, flatness or roughness
 * @param wanted the tolerance, or the greatest value
 * @param expected what the finishing passes leave; absent if not computed
 * @param judgement within, in doubt, exceeded or not judged
 * @param pass number of the pass that decides it; absent if none does
 */
public record ToleranceCheck(
    String what,
    Quantity wanted,
    @Nullable Quantity expected,
    String judgement,
    @Nullable Integer pass) {}
