/** The rule base over HTTP: its cards, its vocabulary, its reload, its health. */
@NullMarked
package org.standproud.api.rulebase;

import org.jspecify.annotations.NullMarked;
