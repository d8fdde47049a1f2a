package org.standproud.rules.card;

/**
 * The source of a card.
 *
 * @param kind the kind of source
 * @param reference title and author; may be empty for common practice
 * @param edition edition or year; may be empty
 * @param page page, section or equation; may be empty
 */
public record Source(SourceKind kind, String reference, String edition, String page) {}
