package org.standproud.audit.replay;

/**
 * A version that is not the one the answer was made with.
 *
 * @param of what: engine, catalogue, vocabulary or rule base
 * @param recorded the version then
 * @param now the version now
 */
public record VersionDifference(String of, String recorded, String now) {}
