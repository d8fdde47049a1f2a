package org.standproud.mechanics.plate;

/**
 * A point of the plate.
 *
 * @param xM along the jaws from the middle of the stock, m
 * @param zM height above the jaw top, m
 */
public record PlatePoint(double xM, double zM) {}
