/** Pages that tell a card to whoever reads it: one a card, and an index. */
@NullMarked
package org.standproud.rules.pages;

import org.jspecify.annotations.NullMarked;
