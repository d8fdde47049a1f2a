package org.standproud.audit.replay;

/**
 * A version that differs from the recorded one.
 *
 * @param of engine, catalogue or vocabulary
 * @param recorded the version then
 * @param now the version now
 */
public record VersionDifference(String of, String recorded, String now) {}
