package org.standproud.advice.job;

/**
 * A step at the bench or at the machine between passes.
 *
 * @param kind its kind
 * @param text what to do
 * @param minutes likely time in minutes
 */
public record RouteStep(BenchStep kind, String text, double minutes) {}
