/** The rule engine side by side with a plain loop and with other general-purpose engines. */
@NullMarked
package org.standproud.rules.beside;

import org.jspecify.annotations.NullMarked;
