/** Rule cards as written: the parts of a card, and the parser that reports errors. */
@NullMarked
package org.standproud.rules.card;

import org.jspecify.annotations.NullMarked;
