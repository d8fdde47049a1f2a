/** The rule engine side by side with hand-written Java and with other general-purpose engines. */
@NullMarked
package org.standproud.rules.beside;

import org.jspecify.annotations.NullMarked;
