package org.standproud.rules.card;

/**
 * A text of a card with its position in the file.
 *
 * @param text the text, quotes removed
 * @param line line, from 1
 * @param column column of its first character, from 1
 */
public record Written(String text, int line, int column) {}
