package org.standproud.setup;

/**
 * One piece of packing between the stock and a jaw.
 *
 * @param side the jaw it lies against
 * @param kind its shape
 * @param material what it is made of
 * @param sizeM diameter of a wire, thickness of any other kind, in m
 * @param depthM depth of its middle below the jaw top in m
 */
public record Packing(
    JawSide side, PackingKind kind, PackingMaterial material, double sizeM, double depthM) {}
