/** Commands for rule authors: check, test, explain, new, pages. */
@NullMarked
package org.standproud.command.rules;

import org.jspecify.annotations.NullMarked;
