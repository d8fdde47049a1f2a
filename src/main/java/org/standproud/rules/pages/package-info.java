/** Markdown pages of the cards: one a card, and an index. */
@NullMarked
package org.standproud.rules.pages;

import org.jspecify.annotations.NullMarked;
