/**
 * Rule cards as their authors write them: the parts of a card, and the reader that refuses a bad
 * one.
 */
@NullMarked
package org.standproud.rules.card;

import org.jspecify.annotations.NullMarked;
