/**
 * Conditions of rule cards: a closed subset of FEEL, read, checked for dimension and turned into
 * predicates.
 */
@NullMarked
package org.standproud.rules.language;

import org.jspecify.annotations.NullMarked;
