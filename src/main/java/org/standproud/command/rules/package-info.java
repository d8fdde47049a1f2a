/** The commands for the keeper of the cards: check, test, explain, new, pages. */
@NullMarked
package org.standproud.command.rules;

import org.jspecify.annotations.NullMarked;
