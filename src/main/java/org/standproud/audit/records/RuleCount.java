package org.standproud.audit.records;

import java.time.Instant;

/**
 * Number of findings of a card in a period.
 *
 * @param cardId the card
 * @param severity severity of the finding
 * @param kind kind of the finding
 * @param from start of the period
 * @param count number of findings in assessments of that period
 */
public record RuleCount(String cardId, String severity, String kind, Instant from, long count) {}
