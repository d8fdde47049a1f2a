package org.standproud.rules.beside;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standproud.rules.trace.CardKind;
import org.standproud.rules.trace.ConditionTrace;
import org.standproud.rules.trace.Margin;

/**
 * What one card of the loop came to.
 *
 * @param outcome its kind, draws and severity
 * @param conditions its selectors and, if it applies, its conditions
 * @param margin how far the whole card is from flipping, or null
 */
record LoopTrace(CardKind outcome, List<ConditionTrace> conditions, @Nullable Margin margin) {}
