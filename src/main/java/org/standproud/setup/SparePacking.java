package org.standproud.setup;

/**
 * A piece of packing on the shelf, not yet placed.
 *
 * @param kind its shape
 * @param material what it is made of
 * @param sizeM diameter of a wire, thickness of any other kind, in m
 */
public record SparePacking(PackingKind kind, PackingMaterial material, double sizeM) {}
