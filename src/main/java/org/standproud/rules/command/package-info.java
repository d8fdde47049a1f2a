/** The commands for whoever keeps the cards: check, test, explain, new, pages. */
@NullMarked
package org.standproud.rules.command;

import org.jspecify.annotations.NullMarked;
