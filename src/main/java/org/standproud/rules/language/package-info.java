/**
 * Conditions of rule cards: a closed subset of FEEL, parsed, checked for dimension and compiled to
 * predicates.
 *
 * <p>Robust: hostile text costs bounded time. {@link ConditionText} limits length, nesting and
 * numbers before any parser runs, {@link ConditionSize} limits the steps of evaluation, and nothing
 * is ever executed as FEEL. Comparisons have a relative tolerance, so unit conversion cannot flip
 * one. A comparison with a missing fact, or in a draw in which the set-up lets go, is never true.
 * Not robust: a name of a fact that the FEEL grammar reads as a keyword, which the gate refuses.
 *
 * <p>Cost: conditions are parsed once, when cards are checked or published. Evaluation is one pass
 * over the draws for each term; a fact that is the same in every draw is evaluated once.
 */
@NullMarked
package org.standproud.rules.language;

import org.jspecify.annotations.NullMarked;
