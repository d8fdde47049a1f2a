package org.standproud.audit.records;

import java.time.Instant;

/**
 * How often a card said something in a span of time.
 *
 * @param cardId the card
 * @param severity its severity then
 * @param kind its SARIF result kind
 * @param from where the span begins
 * @param count number of findings in records of that span
 */
public record RuleCount(String cardId, String severity, String kind, Instant from, long count) {}
