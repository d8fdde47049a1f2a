package org.standproud.rules.trace;

import org.standproud.rules.card.Severity;

/**
 * A change of severity that took place.
 *
 * @param by id of the card that changed it
 * @param overrides whether it set the severity outright
 * @param to the new severity
 * @param because the reason
 */
public record Changed(String by, boolean overrides, Severity to, String because) {}
