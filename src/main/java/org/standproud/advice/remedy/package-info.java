/** What to change so that a set-up holds: smallest changes, each proved by judging it again. */
@NullMarked
package org.standproud.advice.remedy;

import org.jspecify.annotations.NullMarked;
