/** The rule base over REST: cards, drafts, proposals, revisions, impact, vocabulary. */
@NullMarked
package org.standproud.api.rulebase;

import org.jspecify.annotations.NullMarked;
